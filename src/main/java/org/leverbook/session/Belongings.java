package org.leverbook.session;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import jdk.jshell.ImportSnippet;
import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

/**
 * What the user declared and what it holds, and how to bring back what it held before. Whoever
 * changes it holds the compile lock; anyone may look.
 */
final class Belongings {

  private final JShell shell;
  private final Engine engine;
  private volatile Map<String, Held> now = Map.of();

  Belongings(JShell shell, Engine engine) {
    this.shell = shell;
    this.engine = engine;
  }

  /** How all is before a piece. */
  Before before() {
    Map<String, Held> held = now;
    Map<String, Object> values = new HashMap<>();
    held.forEach(
        (key, one) -> {
          if (one.field() != null) {
            values.put(key, one.value());
          }
        });
    return new Before(held, values);
  }

  /**
   * How all was at some time.
   *
   * @param held the declarations in force
   * @param values what the variables among them held
   */
  record Before(Map<String, Held> held, Map<String, Object> values) {}

  /** Takes in what the compiler reports of a piece; gives what it changed. */
  Change noted(List<SnippetEvent> events, Before before) {
    for (SnippetEvent event : events) {
      note(event);
    }
    List<Change.Declared> declared = new ArrayList<>();
    Map<String, Object> assigned = new HashMap<>();
    now.forEach(
        (key, after) -> {
          Held earlier = before.held().get(key);
          if (earlier == null || earlier.snippet() != after.snippet()) {
            Object value = before.values().get(key);
            declared.add(new Change.Declared(key, Optional.ofNullable(earlier), value, after));
          } else if (after.field() != null && changed(before.values().get(key), after.value())) {
            assigned.put(key, before.values().get(key));
          }
        });
    return declared.isEmpty() && assigned.isEmpty()
        ? Change.NONE
        : new Change(this, declared, assigned);
  }

  /** Numbers and truth values come in a new box each time they are read. */
  private static boolean changed(Object before, Object after) {
    boolean boxed = after instanceof Number || after instanceof Boolean;
    return boxed || after instanceof Character ? !Objects.equals(before, after) : before != after;
  }

  private void note(SnippetEvent event) {
    Snippet snippet = event.snippet();
    String key = key(snippet);
    if (key == null) {
      return;
    }
    Map<String, Held> next = new LinkedHashMap<>(now);
    if (event.status().isActive()) {
      next.put(key, held(snippet, event.status()));
    } else if (next.containsKey(key) && next.get(key).snippet() == snippet) {
      next.remove(key);
    }
    now = Collections.unmodifiableMap(next);
  }

  private static String key(Snippet snippet) {
    if (snippet instanceof VarSnippet variable) {
      return variable.subKind() == SubKind.TEMP_VAR_EXPRESSION_SUBKIND ? null : variable.name();
    }
    if (snippet instanceof MethodSnippet method) {
      return method.name() + "(" + method.parameterTypes() + ")";
    }
    if (snippet instanceof TypeDeclSnippet type) {
      return "class " + type.name();
    }
    return snippet instanceof ImportSnippet imported
        ? (imported.isStatic() ? "import static " : "import ") + imported.fullname()
        : null;
  }

  private Held held(Snippet snippet, Status status) {
    String source = snippet.source();
    if (snippet instanceof VarSnippet variable) {
      Field field = status == Status.VALID ? engine.fieldOf(shell, variable) : null;
      String type = variable.typeName();
      return new Held(Belonging.Kind.VARIABLE, variable.name(), type, source, snippet, field);
    }
    if (snippet instanceof MethodSnippet method) {
      String type = method.signature();
      return new Held(Belonging.Kind.METHOD, method.name(), type, source, snippet, null);
    }
    if (snippet instanceof TypeDeclSnippet type) {
      String kind =
          switch (type.subKind()) {
            case INTERFACE_SUBKIND -> "interface";
            case ENUM_SUBKIND -> "enum";
            case ANNOTATION_TYPE_SUBKIND -> "annotation";
            default -> source.stripLeading().startsWith("record ") ? "record" : "class";
          };
      return new Held(Belonging.Kind.CLASS, type.name(), kind, source, snippet, null);
    }
    String name = ((ImportSnippet) snippet).fullname();
    return new Held(Belonging.Kind.IMPORT, name, "", source, snippet, null);
  }

  /** What is there, in the order in which it was declared first. */
  List<Belonging> told() {
    return now.values().stream().map(Held::told).toList();
  }

  /** Brings back what was before a change. */
  TakenBack takeBack(Change change) {
    List<String> gone = new ArrayList<>();
    List<String> back = new ArrayList<>();
    List<String> lost = new ArrayList<>();
    List<Change.Declared> backwards = new ArrayList<>(change.declared());
    Collections.reverse(backwards);
    for (Change.Declared one : backwards) {
      String name = one.after().label();
      if (one.before().isEmpty()) {
        // Not the snippet that the change made: taking back a later one has put another there.
        Held there = now.get(one.key());
        if (there != null) {
          shell.drop(there.snippet()).forEach(this::note);
        }
        gone.add(name);
      } else {
        (isBack(one.key(), one.before().get(), one.value()) ? back : lost).add(name);
      }
    }
    change.assigned().forEach((key, value) -> (set(now.get(key), value) ? back : lost).add(key));
    return new TakenBack(gone, back, lost);
  }

  private boolean isBack(String key, Held before, Object value) {
    boolean variable = before.kind() == Belonging.Kind.VARIABLE;
    // Never its own line again: what that line does beside must not happen twice.
    String code = variable ? before.type() + " " + before.name() + ";" : before.source();
    engine.clear();
    shell.eval(code).forEach(this::note);
    engine.clear();
    Held again = now.get(key);
    if (again == null || again.kind() != before.kind()) {
      return false;
    }
    return !variable || before.field() == null || set(again, value);
  }

  private static boolean set(Held variable, Object value) {
    if (variable == null || variable.field() == null) {
      return false;
    }
    try {
      variable.field().set(null, value);
      return true;
    } catch (IllegalAccessException | IllegalArgumentException e) {
      // Its class was declared anew since: the old value is of a class that is gone.
      return false;
    }
  }
}
