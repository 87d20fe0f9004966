package org.leverbook.session;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.leverbook.data.Nearest;

/** The classes behind the names of types, as far as a vocabulary leads to them. */
final class FittingTypes {

  private static final Map<String, Integer> WIDTH =
      Map.ofEntries(
          Map.entry("byte", 1),
          Map.entry("short", 2),
          Map.entry("char", 2),
          Map.entry("int", 3),
          Map.entry("Integer", 3),
          Map.entry("long", 4),
          Map.entry("Long", 4),
          Map.entry("float", 5),
          Map.entry("Float", 5),
          Map.entry("double", 6),
          Map.entry("Double", 6));

  private final List<Class<?>> vocabulary;
  private Set<String> packages;

  FittingTypes(List<Class<?>> vocabulary) {
    this.vocabulary = vocabulary;
  }

  /** The class of a type's name; empty where it is the user's own, or not known. */
  Optional<Class<?>> of(String type) {
    String bare = Kinds.bare(Kinds.plain(type));
    if (!bare.matches("[A-Z]\\w*(\\.[A-Z]\\w*)*")) {
      return Optional.empty();
    }
    for (String each : packages()) {
      try {
        return Optional.of(Class.forName(each + "." + bare.replace('.', '$'), false, loader()));
      } catch (ClassNotFoundException | LinkageError e) {
        // Some other package has it, or none.
        continue;
      }
    }
    return Optional.empty();
  }

  private ClassLoader loader() {
    return FittingTypes.class.getClassLoader();
  }

  private Set<String> packages() {
    if (packages == null) {
      packages = new LinkedHashSet<>(List.of("java.lang", "java.util"));
      for (Class<?> words : vocabulary) {
        for (Method word : words.getMethods()) {
          packages.add(word.getReturnType().getPackageName());
          Arrays.stream(word.getParameterTypes()).forEach(p -> packages.add(p.getPackageName()));
        }
      }
    }
    return packages;
  }

  /**
   * Whether a value of one type can be given where another is asked.
   *
   * @return empty where that is not known
   */
  Optional<Boolean> fits(String given, String asked) {
    String from = Kinds.plain(given);
    String to = Kinds.plain(asked);
    String bareFrom = Kinds.bare(from);
    String bareTo = Kinds.bare(to);
    if (from.equals(to) || to.equals("Object") || Kinds.isOpen(to)) {
      return Optional.of(true);
    }
    if (WIDTH.containsKey(bareFrom) || WIDTH.containsKey(bareTo)) {
      boolean both = WIDTH.containsKey(bareFrom) && WIDTH.containsKey(bareTo);
      return Optional.of(both && WIDTH.get(bareFrom) <= WIDTH.get(bareTo));
    }
    if (bareFrom.equals(bareTo)) {
      return Optional.of(insideFits(Kinds.inside(from), Kinds.inside(to)));
    }
    Optional<Class<?>> sub = of(from);
    Optional<Class<?>> wide = of(to);
    if (sub.isPresent() && wide.isPresent()) {
      return Optional.of(wide.get().isAssignableFrom(sub.get()));
    }
    boolean plain =
        from.equals("boolean") || to.equals("boolean") || sub.isEmpty() == wide.isEmpty();
    return plain ? Optional.of(false) : Optional.empty();
  }

  private static boolean insideFits(List<String> from, List<String> to) {
    for (int i = 0; i < Math.min(from.size(), to.size()); i++) {
      String asked = to.get(i);
      if (!Kinds.isOpen(asked) && !Kinds.isOpen(from.get(i)) && !asked.equals(from.get(i))) {
        return false;
      }
    }
    return true;
  }

  /** What a value can be asked without arguments so that it gives a type, the plainest first. */
  List<String> giving(String type, String wanted) {
    Optional<Class<?>> target = of(wanted);
    return target.isEmpty() || target.get() == Object.class
        ? List.of()
        : asked(type)
            .filter(m -> target.get().isAssignableFrom(m.getReturnType()))
            .filter(m -> !type(m).contains("Quantity") || fits(type(m), wanted).orElse(false))
            .map(Method::getName)
            .filter(name -> !name.matches("clone|toString|getClass"))
            .distinct()
            .toList();
  }

  private static boolean near(String name, String word) {
    return name.equalsIgnoreCase(word)
        || word.length() > 4
            && name.charAt(0) == word.charAt(0)
            && Nearest.distance(name, word) == 1;
  }

  /** The ways to a word over what a value can be asked without arguments. */
  List<String> leadingTo(String type, String word) {
    return asked(type)
        .filter(m -> !m.getReturnType().getPackageName().startsWith("java"))
        .filter(
            m ->
                Arrays.stream(m.getReturnType().getMethods())
                    .anyMatch(inner -> near(inner.getName(), word)))
        .map(
            m ->
                m.getName()
                    + "()."
                    + Arrays.stream(m.getReturnType().getMethods())
                        .filter(inner -> near(inner.getName(), word))
                        .sorted(Comparator.comparing(inner -> !inner.getName().equals(word)))
                        .map(
                            inner ->
                                inner.getName() + (inner.getParameterCount() == 0 ? "()" : "(...)"))
                        .findFirst()
                        .orElseThrow())
        .distinct()
        .toList();
  }

  /** What a value can be asked without arguments so that it gives a number. */
  List<String> numbers(String type) {
    return asked(type)
        .filter(m -> m.getReturnType() == double.class)
        .map(Method::getName)
        .distinct()
        .sorted(Comparator.comparing(name -> !name.equals("size")))
        .toList();
  }

  private Stream<Method> asked(String type) {
    return of(type).stream()
        .flatMap(c -> Arrays.stream(c.getMethods()))
        .filter(m -> m.getParameterCount() == 0 && !Modifier.isStatic(m.getModifiers()))
        // The plainest word is the shortest.
        .sorted(
            Comparator.<Method>comparingInt(m -> m.getName().length())
                .thenComparing(Method::getName));
  }

  private static String type(Method method) {
    return Kinds.plain(method.getGenericReturnType().getTypeName());
  }
}
