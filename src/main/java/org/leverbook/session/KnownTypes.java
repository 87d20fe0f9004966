package org.leverbook.session;

import com.google.common.reflect.TypeResolver;
import java.lang.reflect.Array;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The types that a session calls by their simple names. */
final class KnownTypes {

  private static final Map<String, Class<?>> PRIMITIVES =
      Map.of(
          "int", int.class,
          "long", long.class,
          "double", double.class,
          "float", float.class,
          "boolean", boolean.class,
          "char", char.class,
          "byte", byte.class,
          "short", short.class,
          "void", void.class);

  private final ClassLoader loader;
  private final Function<String, Optional<Class<?>>> declared;
  private final List<String> imports;
  private final Map<String, Optional<Class<?>>> known = new HashMap<>();

  /**
   * The types of a session.
   *
   * @param loader finds classes
   * @param imports what is imported, as in {@code java.util.*}
   * @param declared finds the classes that the session itself declared
   */
  KnownTypes(
      ClassLoader loader, List<String> imports, Function<String, Optional<Class<?>>> declared) {
    this.loader = loader;
    this.imports = imports;
    this.declared = declared;
  }

  /** A class by the name that the session uses, as in {@code Map.Entry}. */
  Optional<Class<?>> named(String name) {
    Optional<Class<?>> own = declared.apply(name);
    if (own.isPresent()) {
      return own;
    }
    // Finding an inner class asks for the outer one on the way.
    Optional<Class<?>> found = known.get(name);
    if (found == null) {
      found = find(name);
      known.put(name, found);
    }
    return found;
  }

  /** The name by which the session calls a class; empty where it only knows the full one. */
  Optional<String> nameOf(Class<?> type) {
    Class<?> outer = type.getDeclaringClass();
    String name = type.getSimpleName();
    if (outer != null && !Forms.isOfSession(outer)) {
      String simple = name;
      return nameOf(outer).map(before -> before + "." + simple);
    }
    return named(name).filter(found -> found == type).map(found -> name);
  }

  private Optional<Class<?>> find(String name) {
    if (PRIMITIVES.containsKey(name)) {
      return Optional.of(PRIMITIVES.get(name));
    }
    if (name.isEmpty() || !Character.isUpperCase(name.charAt(0))) {
      return Optional.empty();
    }
    int dot = name.indexOf('.');
    if (dot > 0) {
      return named(name.substring(0, dot))
          .flatMap(
              outer -> load(outer.getName() + "$" + name.substring(dot + 1).replace('.', '$')));
    }
    for (String each : imports) {
      if (each.endsWith("." + name)) {
        return load(each);
      }
    }
    Optional<Class<?>> found = load("java.lang." + name);
    for (int i = 0; i < imports.size() && found.isEmpty(); i++) {
      String each = imports.get(i);
      found = each.endsWith(".*") ? load(each.substring(0, each.length() - 1) + name) : found;
    }
    return found;
  }

  private Optional<Class<?>> load(String name) {
    try {
      return Optional.of(Class.forName(name, false, loader));
    } catch (ClassNotFoundException | LinkageError e) {
      // A file system that does not tell capitals apart ends in a linkage error.
      return Optional.empty();
    }
  }

  /** A type as the compiler writes it, as in {@code Map<String,List<Position>>}. */
  Optional<Type> read(String written) {
    List<Token> tokens = new ArrayList<>(Tokens.of(written, written.length()).list());
    Reading reading = new Reading(tokens);
    Optional<Type> type = reading.type();
    return reading.at == tokens.size() ? type : Optional.empty();
  }

  /** Reads a type that begins at a place of a text. */
  Reading reading(List<Token> tokens, int at) {
    Reading reading = new Reading(tokens);
    reading.at = at;
    return reading;
  }

  /** A place in a text where a type stands. */
  final class Reading {
    private final List<Token> tokens;
    private int at;

    private Reading(List<Token> tokens) {
      this.tokens = tokens;
    }

    /** The first piece behind the type. */
    int end() {
      return at;
    }

    /** The type; empty where there is none that is known. */
    Optional<Type> type() {
      if (takes("?")) {
        if (at < tokens.size() && (isWord("extends") || isWord("super"))) {
          at++;
          return type();
        }
        return Optional.of(Object.class);
      }
      StringBuilder name = new StringBuilder();
      while (at < tokens.size() && tokens.get(at).isName()) {
        name.append(tokens.get(at++).text());
        if (at + 1 < tokens.size() && tokens.get(at).is(".") && tokens.get(at + 1).isName()) {
          name.append('.');
          at++;
        } else {
          break;
        }
      }
      Optional<Type> found = full(name.toString()).map(type -> (Type) type);
      if (at < tokens.size() && tokens.get(at).is("<")) {
        found = arguments(found);
      }
      while (at + 1 < tokens.size() && tokens.get(at).is("[") && tokens.get(at + 1).is("]")) {
        at += 2;
        found = found.map(type -> Array.newInstance(Types.raw(type), 0).getClass());
      }
      return found;
    }

    private boolean isWord(String word) {
      return tokens.get(at).isWord(word);
    }

    private boolean takes(String sign) {
      boolean there = at < tokens.size() && tokens.get(at).is(sign);
      at += there ? 1 : 0;
      return there;
    }

    private Optional<Class<?>> full(String name) {
      int simple = 0;
      while (simple < name.length() && Character.isLowerCase(name.charAt(simple))) {
        int dot = name.indexOf('.', simple);
        if (dot < 0) {
          break;
        }
        simple = dot + 1;
      }
      return simple == 0 ? named(name) : load(name);
    }

    private Optional<Type> arguments(Optional<Type> raw) {
      at++;
      List<Type> given = new ArrayList<>();
      boolean all = raw.isPresent();
      while (at < tokens.size() && !tokens.get(at).is(">")) {
        int before = at;
        Optional<Type> each = type();
        each.ifPresent(given::add);
        all &= each.isPresent();
        takes(",");
        if (at == before) {
          return Optional.empty();
        }
      }
      boolean closed = takes(">");
      if (!all || !closed) {
        return Optional.empty();
      }
      Class<?> type = (Class<?>) raw.get();
      boolean fits = type.getTypeParameters().length == given.size();
      return Optional.of(fits ? new TypeResolver().resolveType(new Filled(type, given)) : type);
    }
  }

  /**
   * A class with its arguments filled in.
   *
   * @param raw the class
   * @param arguments as many as it has parameters
   */
  private record Filled(Class<?> raw, List<Type> arguments) implements ParameterizedType {

    @Override
    public Type[] getActualTypeArguments() {
      return arguments.stream().map(Types::wrapped).toArray(Type[]::new);
    }

    @Override
    public Type getRawType() {
      return raw;
    }

    @Override
    public Type getOwnerType() {
      return raw.getDeclaringClass();
    }
  }
}
