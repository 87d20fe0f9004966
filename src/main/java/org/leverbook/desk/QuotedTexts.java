package org.leverbook.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.data.DataTable;
import org.leverbook.language.Vocabulary;
import org.leverbook.lift.Library;
import org.leverbook.lift.Lift;
import org.leverbook.marks.Landmark;
import org.leverbook.marks.Photo;
import org.leverbook.muscle.MuscleGroup;
import org.leverbook.muscle.Verdict;
import org.leverbook.quantity.Units;
import org.leverbook.session.Suggestions;

/** What may stand in quotes where the words ask for a name: files, lifts, muscles, landmarks. */
final class QuotedTexts implements Suggestions {

  /** Words that read a file, with the endings that they read. */
  private static final Map<String, Set<String>> FILES =
      Map.of(
          "photo", Set.of("png", "jpg", "jpeg", "gif", "bmp"),
          "landmarks", Set.of("csv"),
          "lifters", Set.of("csv"),
          "table", Set.of("csv", "json"),
          "labelWords", Set.of("txt"),
          "load", Set.of("jsh", "ipynb"));

  /** More names than this nobody reads in a list. */
  private static final int MOST_FILES = 500;

  private static final Pattern EXAMPLE = Pattern.compile("\\[(.+?)] (.+)");
  private static final Pattern THEME = Pattern.compile("([^#|]+?) \\| .* \\| (.+)");
  private static final Pattern TERM =
      Pattern.compile("([^#;|]+?)(?:;[^|]*)? \\| (.+?)(?:\\. .*)?\\.? \\| .*");

  private static List<Suggestion> lifts;

  @Override
  public List<Suggestion> at(Quoted where) {
    String called = where.called();
    boolean first = where.argument() == 0;
    if (first && FILES.containsKey(called) || where.parameter().equals("file")) {
      return files(where.begun(), FILES.getOrDefault(called, Set.of()));
    }
    if (called.equals("named") && isOf(where, Library.class) || called.equals("liftOf") && first) {
      return lifts();
    }
    if (called.equals("muscle") || called.equals("named") && isOf(where, MuscleGroup.class)) {
      return named(MuscleGroup.names(), "muscles");
    }
    if (called.equals("group") && isOf(where, Verdict.class)) {
      return named(groups(), "group of muscles");
    }
    boolean marks = called.equals("mark") && first || called.equals("nearer");
    if (marks && isOf(where, Photo.class)) {
      return landmarks();
    }
    if (called.equals("help") && first) {
      return topics();
    }
    if (called.equals("example") && first) {
      return listed("examples.txt", EXAMPLE, true);
    }
    if (called.equals("words") && first) {
      return listed("themes.txt", THEME, true);
    }
    return called.equals("about") && first
        ? named(List.of("flexion", "abduction", "rotation"), "axis of a joint")
        : List.of();
  }

  private static boolean isOf(Quoted where, Class<?> type) {
    return where.owner().filter(type::equals).isPresent();
  }

  private static List<Suggestion> named(List<String> names, String about) {
    return names.stream().map(name -> new Suggestion(name, about, true)).toList();
  }

  /** Made once: each lift tells its own name and purpose. */
  private static synchronized List<Suggestion> lifts() {
    if (lifts == null) {
      Person usual = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
      List<Lift<?>> all = Library.of(usual).lifts();
      lifts = all.stream().map(l -> new Suggestion(l.name(), l.purpose(), true)).toList();
    }
    return lifts;
  }

  private static List<String> groups() {
    return DataTable.read("muscle/verdict_groups.csv").rows().stream()
        .map(row -> row.text("group"))
        .distinct()
        .toList();
  }

  private static List<Suggestion> landmarks() {
    List<Suggestion> found = new ArrayList<>();
    for (Landmark each : Landmark.values()) {
      found.add(new Suggestion(each.word(), "on the side that the photo shows", true));
      if (each.paired()) {
        found.add(new Suggestion(Side.LEFT.of(each.word()), "", false));
        found.add(new Suggestion(Side.RIGHT.of(each.word()), "", false));
      }
    }
    return found;
  }

  /** The words themselves first, then what the glossary knows. */
  private static List<Suggestion> topics() {
    List<Suggestion> found = new ArrayList<>(named(words(), ""));
    found.addAll(listed("glossary.txt", TERM, false));
    return found;
  }

  /** The names in a text of the language that lists something, each with what stands beside it. */
  private static List<Suggestion> listed(String file, Pattern line, boolean fits) {
    try (InputStream text = Vocabulary.class.getResourceAsStream(file)) {
      return text == null
          ? List.of()
          : new String(text.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .map(line::matcher)
              .filter(Matcher::matches)
              .map(found -> new Suggestion(found.group(1), found.group(2), fits))
              .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> words() {
    Set<String> words = new TreeSet<>(List.of("columns"));
    Arrays.stream(Vocabulary.class.getMethods())
        .filter(method -> method.getDeclaringClass() != Object.class)
        .forEach(method -> words.add(method.getName()));
    Arrays.stream(Vocabulary.class.getFields()).forEach(field -> words.add(field.getName()));
    return List.copyOf(words);
  }

  /** The files of the folder that is typed so far, those first that end as they should. */
  private static List<Suggestion> files(String begun, Set<String> endings) {
    String folder =
        begun.substring(0, Math.max(begun.lastIndexOf('/'), begun.lastIndexOf('\\')) + 1);
    String name = begun.substring(folder.length());
    try (Stream<Path> all = Files.list(Path.of(folder.isEmpty() ? "." : folder))) {
      return all.filter(path -> name.startsWith(".") || !isHidden(path))
          .sorted()
          .limit(MOST_FILES)
          .map(path -> suggestion(folder, path, endings))
          .collect(Collectors.toList());
    } catch (IOException | InvalidPathException | SecurityException e) {
      // A folder that is not there, or cannot be read, has nothing to offer.
      return List.of();
    }
  }

  private static boolean isHidden(Path path) {
    return path.getFileName().toString().startsWith(".");
  }

  private static Suggestion suggestion(String folder, Path path, Set<String> endings) {
    String name = path.getFileName().toString();
    if (Files.isDirectory(path)) {
      return new Suggestion(folder + name + "/", "folder", false);
    }
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    return new Suggestion(folder + name, "file", endings.isEmpty() || endings.contains(ending));
  }
}
