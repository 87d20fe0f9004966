package org.leverbook.session;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.leverbook.language.WordList;

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

  /** The constants among the words that are values of a type. */
  List<String> constants(String type) {
    return vocabulary.stream()
        .flatMap(Makers::words)
        .filter(word -> word.type().equals(type) && !word.name().endsWith("("))
        .map(Word::name)
        .toList();
  }

  /** Words that make a value of a type from a plain number: units. */
  List<String> units(String type) {
    return numbers()
        .filter(m -> name(m.getGenericReturnType()).equals(type))
        .map(Method::getName)
        .toList();
  }

  /** All words that make something from a plain number alone and give it a unit. */
  List<String> units() {
    return numbers().map(Method::getName).distinct().toList();
  }

  private Stream<Method> numbers() {
    return vocabulary.stream()
        .flatMap(from -> Arrays.stream(from.getMethods()))
        .filter(m -> Modifier.isStatic(m.getModifiers()))
        .filter(m -> m.getParameterCount() == 1 && m.getParameterTypes()[0] == double.class)
        .filter(m -> name(m.getGenericReturnType()).startsWith("Quantity<"))
        .sorted(java.util.Comparator.comparing(Method::getName));
  }

  /**
   * How such a value is written, with a number where the caller has one.
   *
   * @param type the type without packages
   * @param number what the user wrote for it; empty where nothing fits
   * @return as in {@code kg(140)} or {@code barbell(kg(140))}; empty where no word makes one
   */
  String example(String type, String number) {
    List<String> units = units(type);
    if (!units.isEmpty() && !number.isEmpty()) {
      return units.get(0) + "(" + number + ")";
    }
    for (String word : of(type)) {
      if (!word.endsWith("(")) {
        return word;
      }
      String call = call(word.substring(0, word.length() - 1));
      if (!call.isEmpty()) {
        return call;
      }
    }
    return "";
  }

  /** A call of a word as the list of words shows it; empty where it shows none. */
  String call(String word) {
    boolean known = vocabulary.stream().anyMatch(from -> declares(from, word));
    if (!known) {
      return "";
    }
    for (String line : WordList.examplesOf(word)) {
      java.util.regex.Matcher at =
          java.util.regex.Pattern.compile("(?<![\\w.])" + word + "\\(").matcher(line);
      if (at.find()) {
        int end = Call.named(line, at.start()).map(Call::end).orElse(at.end());
        return line.substring(at.start(), end);
      }
    }
    return "";
  }

  /** Whether a word is one that can be called. */
  boolean has(String word) {
    return vocabulary.stream().anyMatch(from -> declares(from, word));
  }

  /** Whether a word can be called with one value of a type. */
  boolean takes(String word, String type, FittingTypes types) {
    return vocabulary.stream()
        .flatMap(from -> Arrays.stream(from.getMethods()))
        .filter(m -> m.getName().equals(word) && m.getParameterCount() > 0)
        .anyMatch(m -> types.fits(type, name(m.getGenericParameterTypes()[0])).orElse(false));
  }

  private static boolean declares(Class<?> from, String word) {
    return Arrays.stream(from.getMethods())
        .anyMatch(m -> Modifier.isStatic(m.getModifiers()) && m.getName().equals(word));
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
