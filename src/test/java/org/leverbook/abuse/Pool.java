package org.leverbook.abuse;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.leverbook.language.Vocabulary;
import org.leverbook.study.ToFile;

/** The values that a user has made so far: good ones that stay, and whatever came of odd inputs. */
final class Pool {

  private static final int MOST_OF_A_KIND = 8;

  private static final List<String> TEXTS =
      List.of("hip height", "bar", "club.csv", "hinge", "HIP", "a.csv", "a.png", "a.html", "floor");

  /** What Java itself gives every class; no one writes it. */
  private static final List<String> ASIDE = List.of("toString", "hashCode", "equals", "valueOf");

  private final Random random;
  private final Map<Class<?>, List<Object>> kept = new LinkedHashMap<>();
  private final Map<Class<?>, List<Object>> came = new LinkedHashMap<>();
  private final Map<Class<?>, List<Method>> methods = new LinkedHashMap<>();
  private final List<Class<?>> kinds = new ArrayList<>();

  Pool(Random random) {
    this.random = random;
    methods.put(Vocabulary.class, methods(Vocabulary.class));
  }

  /** A good value that stays. */
  void keep(Object value) {
    learn(value.getClass());
    kept.computeIfAbsent(value.getClass(), c -> new ArrayList<>()).add(value);
  }

  /** A value that came of a call. */
  void came(Object value) {
    Class<?> kind = value.getClass();
    if (!kind.getName().startsWith("org.leverbook.") || kind.getName().contains(".abuse.")) {
      return;
    }
    learn(kind);
    List<Object> list = came.computeIfAbsent(kind, c -> new ArrayList<>());
    if (list.size() < MOST_OF_A_KIND) {
      list.add(value);
    } else {
      list.set(random.nextInt(MOST_OF_A_KIND), value);
    }
  }

  private void learn(Class<?> kind) {
    if (methods.putIfAbsent(kind, methods(kind)) == null) {
      kinds.add(kind);
    }
  }

  private static List<Method> methods(Class<?> kind) {
    return Arrays.stream(kind.getMethods())
        .filter(m -> m.getDeclaringClass().getName().startsWith("org.leverbook."))
        .filter(m -> !m.isBridge() && !m.isSynthetic())
        .filter(m -> !ASIDE.contains(m.getName()))
        // A file of any size is written by design, and can be stopped: its own test tries that.
        .filter(m -> !m.getDeclaringClass().equals(ToFile.class))
        .filter(m -> Modifier.isPublic(m.getDeclaringClass().getModifiers()))
        .sorted(Comparator.comparing(Method::toGenericString))
        .toList();
  }

  /** A method of the language: a word, or what can be asked of a value that was made. */
  Method method() {
    Class<?> kind =
        kinds.isEmpty() || random.nextInt(3) == 0
            ? Vocabulary.class
            : kinds.get(random.nextInt(kinds.size()));
    List<Method> all = methods.get(kind);
    return all.isEmpty() ? method() : all.get(random.nextInt(all.size()));
  }

  /** Someone to ask the method of; null for a word. */
  Object receiver(Method method) {
    return Modifier.isStatic(method.getModifiers()) ? null : of(method.getDeclaringClass());
  }

  /** A value of a kind, or null where there is none. */
  Object of(Class<?> kind) {
    Object good = random.nextInt(3) == 0 ? null : from(kept, kind);
    Object found = good == null ? from(came, kind) : good;
    return found == null ? from(kept, kind) : found;
  }

  private Object from(Map<Class<?>, List<Object>> values, Class<?> kind) {
    List<List<Object>> fitting =
        values.entrySet().stream()
            .filter(e -> kind.isAssignableFrom(e.getKey()))
            .map(Map.Entry::getValue)
            .toList();
    if (fitting.isEmpty()) {
      return null;
    }
    List<Object> list = fitting.get(random.nextInt(fitting.size()));
    return list.get(random.nextInt(list.size()));
  }

  Object any() {
    return switch (random.nextInt(4)) {
      case 0 -> "text";
      case 1 -> 7;
      default -> of(Object.class);
    };
  }

  String text() {
    return TEXTS.get(random.nextInt(TEXTS.size()));
  }

  /** One kind of unit through a whole call: a span goes from a length to a length. */
  int unit() {
    return turn;
  }

  private int turn;

  void nextCall() {
    turn = random.nextInt(1000);
  }
}
