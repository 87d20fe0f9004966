package org.leverbook.session;

import java.lang.reflect.GenericArrayType;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Types and forms as a coach would say them: a length, not a {@code Quantity<Length>}. */
final class Terms {

  /** So many choices are told one by one. */
  private static final int FEW = 3;

  private static final Map<String, String> OWN =
      Map.ofEntries(
          Map.entry("String", "text"),
          Map.entry("CharSequence", "text"),
          Map.entry("Object", "any value"),
          Map.entry("Number", "number"),
          Map.entry("Double", "number"),
          Map.entry("Float", "number"),
          Map.entry("Integer", "whole number"),
          Map.entry("Long", "whole number"),
          Map.entry("Short", "whole number"),
          Map.entry("Byte", "whole number"),
          Map.entry("Boolean", "true or false"),
          Map.entry("Character", "letter"),
          Map.entry("Void", "nothing"),
          Map.entry("Dimensionless", "share"),
          Map.entry("Vector3D", "point"),
          Map.entry("JointId", "joint"));

  private static final Set<String> LISTS =
      Set.of("List", "Collection", "Iterable", "Set", "Stream", "SortedSet", "SequencedCollection");

  private Terms() {}

  /** A type in a coach's words. */
  static String of(Type type) {
    if (type instanceof WildcardType wildcard) {
      return of(Types.bound(wildcard));
    }
    if (type instanceof TypeVariable<?> variable) {
      Type bound = variable.getBounds()[0];
      return bound == Object.class ? "any value" : of(Types.raw(bound));
    }
    Optional<String> shape = lambda(type);
    if (shape.isPresent()) {
      return shape.get();
    }
    if (type instanceof GenericArrayType array) {
      return "list of " + of(array.getGenericComponentType());
    }
    if (type instanceof ParameterizedType generic) {
      return generic(generic);
    }
    Class<?> plain = (Class<?>) Types.wrapped(type);
    return plain.isArray() ? "list of " + of(plain.getComponentType()) : simple(plain);
  }

  private static String simple(Class<?> type) {
    String name = type.getSimpleName();
    if (name.equals("void")) {
      return "nothing";
    }
    return OWN.getOrDefault(name, Words.spaced(name).toLowerCase(Locale.ROOT));
  }

  private static String generic(ParameterizedType type) {
    String name = Types.raw(type).getSimpleName();
    List<String> of = Arrays.stream(type.getActualTypeArguments()).map(Terms::of).toList();
    if (name.equals("Quantity")) {
      return Types.isOpen(type) ? "quantity" : of.get(0);
    }
    if (name.equals("Optional")) {
      return of.get(0) + " or nothing";
    }
    if (LISTS.contains(name)) {
      return "list of " + of.get(0);
    }
    return name.equals("Map")
        ? "map of " + of.get(0) + " to " + of.get(1)
        : simple(Types.raw(type));
  }

  /** The shape of a lambda, where one is wanted, as in {@code length -> position}. */
  static Optional<String> lambda(Type type) {
    return takenByLambda(type)
        .map(
            names -> {
              Method method = Types.lambda(type).orElseThrow();
              return names + " -> " + of(Types.lambdaGives(type, method));
            });
  }

  /** What a lambda begins with, where one is wanted, as in {@code (length, mass)}. */
  static Optional<String> takenByLambda(Type type) {
    if (type instanceof TypeVariable || type instanceof WildcardType) {
      return Optional.empty();
    }
    return Types.lambda(type)
        .filter(method -> isMeantForLambdas(Types.raw(type), method))
        .map(
            method -> {
              Set<String> names = new LinkedHashSet<>();
              Types.lambdaTakes(type, method).forEach(each -> names.add(unlike(names, name(each))));
              return names.size() == 1
                  ? names.iterator().next()
                  : names.stream().collect(Collectors.joining(", ", "(", ")"));
            });
  }

  private static boolean isMeantForLambdas(Class<?> type, Method method) {
    boolean ours = !type.getName().startsWith("java.") && !type.getName().startsWith("javax.");
    return type.isAnnotationPresent(FunctionalInterface.class)
        || ours && method.getParameterCount() > 0;
  }

  /** One word, as a name in Java can be. */
  private static String name(Type type) {
    String term = of(type);
    String last = term.substring(term.lastIndexOf(' ') + 1);
    boolean plain = last.chars().allMatch(Character::isLetter) && !Keywords.about(last).isEmpty();
    return last.chars().allMatch(Character::isLetter) && !plain ? last : "value";
  }

  private static String unlike(Set<String> names, String name) {
    String unlike = name;
    for (int i = 2; names.contains(unlike); i++) {
      unlike = name + i;
    }
    return unlike;
  }

  /** What is asked for at a place of a form: a choice of few is told whole. */
  private static String asked(Type type) {
    Class<?> raw = type instanceof TypeVariable ? Object.class : Types.raw(type);
    Object[] choices = raw.getEnumConstants();
    return choices != null && choices.length <= FEW
        ? Arrays.stream(choices)
            .map(each -> ((Enum<?>) each).name())
            .collect(Collectors.joining(" or "))
        : of(type);
  }

  /** A form in one line, as in {@code person(sex: MALE or FEMALE, mass, stature: length)}. */
  static String form(Form form) {
    StringBuilder said = new StringBuilder(form.name()).append('(');
    for (int i = 0; i < form.parameters().size(); i++) {
      Form.Parameter each = form.parameters().get(i);
      boolean many = form.varargs() && i == form.parameters().size() - 1;
      Type type = many ? Types.element(each.type()).orElse(each.type()) : each.type();
      String term = asked(type);
      String name = Words.spaced(each.name());
      said.append(i == 0 ? "" : ", ");
      said.append(each.name().isEmpty() || name.equals(term) ? term : each.name() + ": " + term);
      said.append(many ? ", …" : "");
    }
    said.append(')');
    boolean maker =
        form.owner() != null
            && form.gives() == form.owner()
            && form.isStatic()
            && form.origin().filter(o -> o instanceof java.lang.reflect.Constructor).isPresent();
    return maker || form.gives() == void.class ? said.toString() : said + ": " + of(form.gives());
  }

  /** A form as Java writes it, as in {@code Hinge.holding(Barbell load): Hinge}. */
  static String signature(Form form, boolean word) {
    String owner = form.owner() == null || word ? "" : form.owner().getSimpleName() + ".";
    boolean maker =
        form.origin().filter(o -> o instanceof java.lang.reflect.Constructor).isPresent();
    StringBuilder said = new StringBuilder(maker ? "new " : owner).append(form.name()).append('(');
    for (int i = 0; i < form.parameters().size(); i++) {
      Form.Parameter each = form.parameters().get(i);
      boolean many = form.varargs() && i == form.parameters().size() - 1;
      Type type = many ? Types.element(each.type()).orElse(each.type()) : each.type();
      said.append(i == 0 ? "" : ", ").append(java(type)).append(many ? "..." : "");
      said.append(each.name().isEmpty() ? "" : " " + each.name());
    }
    said.append(')');
    return maker || form.gives() == void.class ? said.toString() : said + ": " + java(form.gives());
  }

  /** A type as Java writes it, without packages. */
  static String java(Type type) {
    return Words.cleaned(type.getTypeName()).replace('$', '.').replaceAll("capture#\\S+ of ", "");
  }
}
