package org.leverbook.session;

import java.lang.reflect.Type;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;

/** The names that mean something at a place: of the text itself, of the session, of the words. */
final class Scope {

  private final Declared declared;
  private final StaticWords words;
  private final Map<String, Local> locals = new TreeMap<>();
  private final Deque<Map<String, Optional<Meaning>>> within = new ArrayDeque<>();
  private final Map<String, Optional<Type>> variables;
  private final KnownTypes types;
  private Map<String, List<Form>> methods;
  private Map<String, Optional<Type>> own;

  /** A name of the text; what it means is found out when asked, and once. */
  private static final class Local {
    private Supplier<Optional<Type>> finder;
    private Optional<Type> type = Optional.empty();

    Local(Supplier<Optional<Type>> finder) {
      this.finder = finder;
    }

    Optional<Type> type() {
      if (finder != null) {
        Supplier<Optional<Type>> once = finder;
        // A name that asks for itself on the way has no type.
        finder = null;
        type = once.get();
      }
      return type;
    }
  }

  Scope(Declared declared, StaticWords words) {
    this.declared = declared;
    this.words = words;
    this.variables = declared.variables();
    this.types = declared.types();
  }

  /** A name of the text. */
  void add(String name, Supplier<Optional<Type>> type) {
    locals.put(name, new Local(type));
    own = null;
  }

  KnownTypes types() {
    return types;
  }

  StaticWords words() {
    return words;
  }

  Declared declared() {
    return declared;
  }

  /** What a name means; empty where it is not known, or its type is not. */
  Optional<Meaning> meaning(String name) {
    for (Map<String, Optional<Meaning>> each : within) {
      if (each.containsKey(name)) {
        return each.get(name);
      }
    }
    if (locals.containsKey(name)) {
      return locals.get(name).type().map(Meaning::value);
    }
    if (variables.containsKey(name)) {
      return variables.get(name).map(Meaning::value);
    }
    if (words.constants().containsKey(name)) {
      return Optional.of(Meaning.value(words.constants().get(name).getGenericType()));
    }
    if (name.startsWith("$")) {
      return declared.result(name).map(Meaning::value);
    }
    return types().named(name).map(type -> new Meaning(type, true));
  }

  /** The forms of what is called by its name alone: the user's methods hide the words. */
  List<Form> forms(String name) {
    List<Form> own = methods().getOrDefault(name, List.of());
    return own.isEmpty() ? words.methods().getOrDefault(name, List.of()) : own;
  }

  /** The user's methods. */
  Map<String, List<Form>> methods() {
    if (methods == null) {
      methods = declared.methods();
    }
    return methods;
  }

  /** The names of the text and the user's variables, with their types where known. */
  Map<String, Optional<Type>> own() {
    if (own == null) {
      Map<String, Optional<Type>> found = new TreeMap<>(variables);
      locals.forEach((name, local) -> found.put(name, local.type()));
      own = found;
    }
    return own;
  }

  /** Does something while some names mean something else. */
  <T> T within(Map<String, Optional<Meaning>> meanings, Supplier<T> work) {
    within.push(new HashMap<>(meanings));
    try {
      return work.get();
    } finally {
      within.pop();
    }
  }
}
