package org.leverbook.session;

import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

/** What a session has declared by now, as the compiler keeps it; its reader holds the lock. */
final class Declared {

  private final JShell shell;
  private final SnippetLoader loader;
  private List<String> imports = List.of();
  private KnownTypes types;
  private final Map<String, Optional<Type>> read = new HashMap<>();

  Declared(JShell shell, SnippetLoader loader) {
    this.shell = shell;
    this.loader = loader;
  }

  /** The types by the names that the session knows. */
  KnownTypes types() {
    List<String> now =
        shell.imports().flatMap(each -> Preamble.importsOfTypes(each.source())).toList();
    if (types == null || !now.equals(imports)) {
      imports = now;
      types = new KnownTypes(loader, now, loader::declared);
      read.clear();
    }
    return types;
  }

  /** The variables of the user, each with its type where that can be told. */
  Map<String, Optional<Type>> variables() {
    Map<String, Optional<Type>> found = new TreeMap<>();
    shell
        .variables()
        .filter(
            each ->
                shell.status(each).isActive()
                    && each.subKind() != SubKind.TEMP_VAR_EXPRESSION_SUBKIND)
        .forEach(each -> found.put(each.name(), type(each)));
    return found;
  }

  /** A hidden variable that holds an earlier result, as in {@code $3}. */
  Optional<Type> result(String name) {
    return shell
        .variables()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .flatMap(this::type);
  }

  private Optional<Type> type(VarSnippet variable) {
    return type(variable.typeName());
  }

  /** A type as it is written; what the user declared may mean another class each time. */
  private Optional<Type> type(String written) {
    KnownTypes now = types();
    if (loader.declares(written)) {
      return now.read(written);
    }
    return read.computeIfAbsent(written, now::read);
  }

  /** The names of the types that the user declared. */
  List<String> typeNames() {
    return shell
        .types()
        .filter(each -> shell.status(each).isActive())
        .map(TypeDeclSnippet::name)
        .sorted()
        .toList();
  }

  /** The user's methods. */
  Map<String, List<Form>> methods() {
    Map<String, List<Form>> found = new TreeMap<>();
    shell
        .methods()
        .filter(each -> shell.status(each).isActive())
        .forEach(
            each ->
                form(each)
                    .ifPresent(
                        form ->
                            found.computeIfAbsent(each.name(), n -> new ArrayList<>()).add(form)));
    return found;
  }

  private Optional<Form> form(MethodSnippet method) {
    String signature = method.signature();
    Optional<Type> gives = type(signature.substring(signature.lastIndexOf(')') + 1));
    String taken = signature.substring(1, signature.lastIndexOf(')'));
    List<Form.Parameter> parameters = new ArrayList<>();
    List<String> names = Names.ofParameters(method.source(), method.name());
    List<String> written = Names.apart(taken);
    for (int i = 0; i < written.size(); i++) {
      String each = written.get(i);
      boolean many = each.endsWith("...");
      Optional<Type> type = type(many ? each.substring(0, each.length() - 3) + "[]" : each);
      if (type.isEmpty()) {
        return Optional.empty();
      }
      String name = i < names.size() ? names.get(i) : "";
      parameters.add(new Form.Parameter(name, type.get()));
    }
    boolean varargs = taken.endsWith("...");
    return gives.map(
        type -> new Form(method.name(), null, parameters, varargs, type, true, Optional.empty()));
  }

  /** Reads the heads of methods. */
  private static final class Names {

    private Names() {}

    /** The parts between commas that stand in no bracket. */
    static List<String> apart(String list) {
      List<String> parts = new ArrayList<>();
      int depth = 0;
      int from = 0;
      for (int i = 0; i < list.length(); i++) {
        char c = list.charAt(i);
        depth += "<(".indexOf(c) >= 0 ? 1 : ">)".indexOf(c) >= 0 ? -1 : 0;
        if (c == ',' && depth == 0) {
          parts.add(list.substring(from, i).strip());
          from = i + 1;
        }
      }
      String last = list.substring(from).strip();
      if (!last.isEmpty()) {
        parts.add(last);
      }
      return parts;
    }

    /** The names of the parameters in the source of a method. */
    static List<String> ofParameters(String source, String method) {
      int name = source.indexOf(method);
      int open = source.indexOf('(', name);
      int close = open;
      int depth = 0;
      while (close < source.length()) {
        depth += source.charAt(close) == '(' ? 1 : source.charAt(close) == ')' ? -1 : 0;
        if (depth == 0) {
          break;
        }
        close++;
      }
      if (name < 0 || open < 0 || close >= source.length()) {
        return List.of();
      }
      return apart(source.substring(open + 1, close)).stream()
          .map(each -> Arrays.asList(each.split("[^\\p{L}\\p{N}_$]+")))
          .map(words -> words.get(words.size() - 1))
          .toList();
    }
  }
}
