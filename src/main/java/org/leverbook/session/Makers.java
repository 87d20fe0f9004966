package org.leverbook.session;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Which words of a vocabulary make a value of a given type. */
final class Makers {

  private static final int MOST = 4;

  private final List<Class<?>> vocabulary;

  Makers(List<Class<?>> vocabulary) {
    this.vocabulary = vocabulary;
  }

  /**
   * The words that make such a value.
   *
   * @param type the type as the compiler names it, without packages, as in {@code Quantity<Mass>}
   * @return at most four, constants as they are, methods with an opening bracket
   */
  List<String> of(String type) {
    return vocabulary.stream()
        .flatMap(Makers::words)
        .filter(word -> word.type().equals(type))
        .map(Word::name)
        .distinct()
        .limit(MOST)
        .toList();
  }

  private record Word(String name, String type) {}

  private static Stream<Word> words(Class<?> from) {
    var methods =
        Arrays.stream(from.getMethods())
            .filter(m -> Modifier.isStatic(m.getModifiers()))
            .filter(m -> m.getDeclaringClass() != Object.class)
            .sorted(java.util.Comparator.comparing(Method::getName))
            .map(m -> new Word(m.getName() + "(", name(m.getGenericReturnType())));
    var constants =
        Arrays.stream(from.getFields())
            .filter(f -> Modifier.isStatic(f.getModifiers()))
            .map(f -> new Word(f.getName(), name(f.getGenericType())));
    return Stream.concat(methods, constants);
  }

  private static String name(java.lang.reflect.Type type) {
    return Words.cleaned(type.getTypeName()).replace('$', '.');
  }
}
