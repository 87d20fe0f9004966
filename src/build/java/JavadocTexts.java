import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EndElementTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.StartElementTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.doctree.ThrowsTree;
import com.sun.source.tree.AnnotatedTypeTree;
import com.sun.source.tree.ArrayTypeTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ParameterizedTypeTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TypeParameterTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * A step of the build: writes what the Javadoc of our sources says as plain text into the jar, one
 * file for each top-level class, so that a session can explain its words. Nothing is compiled, only
 * read, so it takes as long as reading.
 *
 * <p>A line that begins with a blank is text; any other is the key of what follows: {@code Hinge}
 * is a type, {@code Hinge#of(Person)} a method with its erased parameter types, {@code
 * Hinge#new(Setup)} a constructor, {@code JointId#HIP} a field. The first line of a text is its
 * first sentence. A blank inside a piece of code is a no-break space: nobody should break it.
 *
 * <p>Started as {@code java JavadocTexts.java FROM TO}. Where nothing changed, nothing is written.
 */
public final class JavadocTexts {

  private JavadocTexts() {}

  /**
   * Reads and writes.
   *
   * @param arguments the root of the sources, and the folder for the texts
   * @throws IOException if that cannot be done
   */
  public static void main(String[] arguments) throws IOException {
    Path from = Path.of(arguments[0]);
    Path to = Path.of(arguments[1]);
    List<Path> sources = sources(from);
    Path done = to.resolve("complete");
    if (Files.exists(done) && !isOlder(done, sources, from)) {
      return;
    }
    Files.deleteIfExists(done);
    Map<String, String> texts = texts(sources);
    Files.createDirectories(to);
    Set<Path> kept = new HashSet<>();
    for (Map.Entry<String, String> each : texts.entrySet()) {
      Path file = to.resolve(each.getKey() + ".txt");
      kept.add(file);
      Files.write(file, each.getValue().getBytes(StandardCharsets.UTF_8));
    }
    try (Stream<Path> files = Files.list(to)) {
      for (Path file : files.filter(f -> !kept.contains(f)).toList()) {
        Files.delete(file);
      }
    }
    Files.write(done, (texts.size() + "\n").getBytes(StandardCharsets.UTF_8));
  }

  private static List<Path> sources(Path from) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      return files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
    }
  }

  /** Folders count too: theirs is the time at which a source was last taken away. */
  private static boolean isOlder(Path done, List<Path> sources, Path from) throws IOException {
    long time = Files.getLastModifiedTime(done).toMillis();
    for (Path source : sources) {
      if (Files.getLastModifiedTime(source).toMillis() >= time) {
        return true;
      }
    }
    try (Stream<Path> folders = Files.walk(from)) {
      for (Path folder : folders.filter(Files::isDirectory).toList()) {
        if (Files.getLastModifiedTime(folder).toMillis() >= time) {
          return true;
        }
      }
    }
    return false;
  }

  /** From the full name of a top-level class to all that is said in its file. */
  private static Map<String, String> texts(List<Path> sources) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files =
        compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null,
                  files,
                  null,
                  List.of("-proc:none"),
                  null,
                  files.getJavaFileObjectsFromPaths(sources));
      DocTrees trees = DocTrees.instance(task);
      Map<String, String> texts = new TreeMap<>();
      for (CompilationUnitTree unit : task.parse()) {
        new Reader(trees, unit, texts).scan(unit, null);
      }
      return texts;
    }
  }

  /** Goes through one source. */
  private static final class Reader extends TreePathScanner<Void, Void> {

    private final DocTrees trees;
    private final CompilationUnitTree unit;
    private final Map<String, String> texts;
    private final Deque<ClassTree> owners = new ArrayDeque<>();
    private final Map<String, String> variables = new HashMap<>();
    private StringBuilder text;
    private String owner = "";

    Reader(DocTrees trees, CompilationUnitTree unit, Map<String, String> texts) {
      this.trees = trees;
      this.unit = unit;
      this.texts = texts;
    }

    @Override
    public Void visitClass(ClassTree type, Void nothing) {
      if (type.getModifiers().getFlags().contains(Modifier.PRIVATE)
          || type.getSimpleName().length() == 0) {
        return null;
      }
      boolean top = owners.isEmpty();
      String outer = owner;
      owner = top ? type.getSimpleName().toString() : owner + "." + type.getSimpleName();
      text = top ? new StringBuilder() : text;
      owners.push(type);
      remember(type.getTypeParameters());
      DocCommentTree comment = comment();
      write(owner, comment);
      if (comment != null && type.getKind() == Tree.Kind.RECORD) {
        writeComponents(comment, type);
      }
      type.getMembers().forEach(member -> scan(member, null));
      owners.pop();
      owner = outer;
      if (top && text.length() > 0) {
        texts.put(unit.getPackageName() + "." + type.getSimpleName(), text.toString());
      }
      return null;
    }

    @Override
    public Void visitMethod(MethodTree method, Void nothing) {
      if (!method.getModifiers().getFlags().contains(Modifier.PRIVATE)) {
        remember(method.getTypeParameters());
        String name =
            method.getName().contentEquals("<init>") ? "new" : method.getName().toString();
        String parameters =
            method.getParameters().stream()
                .map(parameter -> erased(parameter.getType()))
                .collect(Collectors.joining(","));
        write(owner + "#" + name + "(" + parameters + ")", comment());
      }
      return null;
    }

    @Override
    public Void visitVariable(VariableTree field, Void nothing) {
      if (!field.getModifiers().getFlags().contains(Modifier.PRIVATE)) {
        write(owner + "#" + field.getName(), comment());
      }
      return null;
    }

    private DocCommentTree comment() {
      TreePath path = getCurrentPath();
      return trees.getDocComment(path) == null ? null : trees.getDocCommentTree(path);
    }

    /** What a record says of its components is said of the methods that give them, too. */
    private void writeComponents(DocCommentTree comment, ClassTree type) {
      Set<String> written =
          type.getMembers().stream()
              .filter(member -> member instanceof MethodTree)
              .map(member -> (MethodTree) member)
              .filter(method -> method.getParameters().isEmpty())
              .map(method -> method.getName().toString())
              .collect(Collectors.toSet());
      for (DocTree tag : comment.getBlockTags()) {
        if (tag instanceof ParamTree parameter && !parameter.isTypeParameter()) {
          String name = parameter.getName().getName().toString();
          String said = new Plain().of(parameter.getDescription());
          if (!written.contains(name) && !said.isEmpty()) {
            boolean closed = said.endsWith(".") || said.contains("\n");
            put(owner + "#" + name + "()", capital(said) + (closed ? "" : "."));
          }
        }
      }
    }

    /** A letter that stands alone is a symbol and stays as it is. */
    private static String capital(String said) {
      boolean word = said.length() > 1 && Character.isLowerCase(said.charAt(1));
      return word ? said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1) : said;
    }

    private void write(String key, DocCommentTree comment) {
      if (comment == null) {
        return;
      }
      StringBuilder said = new StringBuilder(new Plain().of(comment.getFullBody()));
      for (DocTree tag : comment.getBlockTags()) {
        if (tag instanceof ParamTree parameter && !parameter.isTypeParameter()) {
          line(said, "@param " + parameter.getName().getName(), parameter.getDescription());
        } else if (tag instanceof ReturnTree given) {
          line(said, "@return", given.getDescription());
        } else if (tag instanceof ThrowsTree refused) {
          String type = refused.getExceptionName().getSignature();
          type = type.substring(type.lastIndexOf('.') + 1);
          line(said, "@throws " + type, refused.getDescription());
        }
      }
      put(key, said.toString());
    }

    private static void line(StringBuilder said, String tag, List<? extends DocTree> description) {
      said.append(said.length() == 0 ? "" : "\n").append(tag).append(' ');
      said.append(new Plain().of(description).replaceAll("\\s*\n\\s*", " "));
    }

    private void put(String key, String said) {
      if (!said.isBlank()) {
        text.append(key).append('\n');
        said.lines().forEach(line -> text.append(' ').append(line).append('\n'));
      }
    }

    private void remember(List<? extends TypeParameterTree> parameters) {
      for (TypeParameterTree each : parameters) {
        String bound = each.getBounds().isEmpty() ? "Object" : erased(each.getBounds().get(0));
        variables.put(each.getName().toString(), bound);
      }
    }

    private String erased(Tree type) {
      if (type instanceof ParameterizedTypeTree generic) {
        return erased(generic.getType());
      }
      if (type instanceof ArrayTypeTree array) {
        return erased(array.getType()) + "[]";
      }
      if (type instanceof AnnotatedTypeTree annotated) {
        return erased(annotated.getUnderlyingType());
      }
      if (type instanceof MemberSelectTree select) {
        return select.getIdentifier().toString();
      }
      return variables.getOrDefault(type.toString(), type.toString());
    }
  }

  /** Javadoc as plain text: a line a paragraph, an item of a list or a row of a table. */
  private static final class Plain {

    private static final Map<String, String> ENTITIES =
        Map.of("lt", "<", "gt", ">", "amp", "&", "nbsp", " ", "times", "×", "sup2", "²");

    private final StringBuilder text = new StringBuilder();
    private final Deque<Integer> counts = new ArrayDeque<>();
    private int preStart = -1;

    String of(List<? extends DocTree> parts) {
      parts.forEach(this::add);
      String said =
          text.toString().replaceAll("[ \\t]*\n[ \\t]*", "\n").replaceAll("\n{3,}", "\n\n").strip();
      return firstSentenceApart(said);
    }

    private static String firstSentenceApart(String said) {
      int end = 0;
      while (end < said.length() && said.charAt(end) != '\n') {
        boolean closes = ".?!".indexOf(said.charAt(end)) >= 0;
        if (closes && end + 2 < said.length() && said.charAt(end + 1) == ' ') {
          return said.substring(0, end + 1) + "\n" + said.substring(end + 2);
        }
        end++;
      }
      return said;
    }

    private void add(DocTree part) {
      if (part instanceof TextTree words) {
        addWords(words.getBody());
      } else if (part instanceof LiteralTree literal) {
        addCode(literal.getBody().getBody());
      } else if (part instanceof LinkTree link) {
        addLink(link);
      } else if (part instanceof EntityTree entity) {
        text.append(ENTITIES.getOrDefault(entity.getName().toString(), "?"));
      } else if (part instanceof StartElementTree start) {
        open(start.getName().toString());
      } else if (part instanceof EndElementTree end) {
        close(end.getName().toString());
      } else {
        addWords(part.toString());
      }
    }

    private void addWords(String words) {
      if (preStart >= 0) {
        text.append(words);
        return;
      }
      String plain = words.replaceAll("\\s+", " ");
      boolean fresh = text.length() == 0 || text.charAt(text.length() - 1) == '\n';
      text.append(fresh ? plain.stripLeading() : plain);
    }

    private void addCode(String code) {
      text.append(
          preStart >= 0 ? code : code.strip().replaceAll("\\s+", " ").replace(' ', '\u00a0'));
    }

    private void addLink(LinkTree link) {
      if (!link.getLabel().isEmpty()) {
        link.getLabel().forEach(this::add);
        return;
      }
      String target = link.getReference().getSignature();
      target = target.startsWith("#") ? target.substring(1) : target.replace('#', '.');
      addCode(target.replaceAll("\\b(?:[a-z][a-z0-9_]*\\.)+(?=[A-Z])", ""));
    }

    private void open(String element) {
      switch (element) {
        case "p", "table" -> text.append("\n\n");
        case "pre" -> {
          text.append("\n\n");
          preStart = text.length();
        }
        case "ol" -> counts.push(1);
        case "ul" -> counts.push(0);
        case "tr" -> text.append('\n');
        case "li" -> {
          int count = counts.isEmpty() ? 0 : counts.pop();
          text.append('\n').append(count == 0 ? "- " : count + ". ");
          counts.push(count == 0 ? 0 : count + 1);
        }
        default -> {
          // Bold and its like: nothing to see in plain text.
        }
      }
    }

    private void close(String element) {
      switch (element) {
        case "ol", "ul" -> {
          counts.poll();
          text.append("\n\n");
        }
        case "pre" -> {
          String lines = indented(text.substring(preStart));
          text.setLength(preStart);
          text.append(lines.replace(' ', '\u00a0')).append("\n\n");
          preStart = -1;
        }
        case "table" -> text.append("\n\n");
        case "td", "th" -> text.append("; ");
        default -> {
          // The end of a paragraph or an item begins nothing.
        }
      }
    }

    /** The blanks before the first line are lost in reading: it is as deep as the next. */
    private static String indented(String lines) {
      String[] apart = lines.strip().split("\n", 2);
      String rest = apart.length == 1 ? "" : "\n" + apart[1].stripIndent();
      return (apart[0] + rest).replaceAll("(?m)[ \t]+$", "");
    }
  }
}
