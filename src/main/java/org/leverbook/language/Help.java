package org.leverbook.language;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.data.Nearest;
import org.leverbook.display.Caution;
import org.leverbook.display.Picture;
import org.leverbook.display.Shown;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.study.Choosing;

/**
 * A help text, of a lift with its picture.
 *
 * @param text what to read
 * @param picture what to look at, if there is something
 */
public record Help(String text, Optional<Picture> picture) implements Shown {

  private static final Set<String> UNTOLD = Set.of("toString", "hashCode", "equals", "text");

  private static final String FIRST_LINE =
      "hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(140))).start()";

  /** A text alone. */
  Help(String text) {
    this(text, Optional.empty());
  }

  /** What there is, on one screen. */
  static Help overview() {
    StringBuilder text = new StringBuilder("Everything is Java. Type a line, press Enter:\n  ");
    text.append(FIRST_LINE).append("\nThe words by theme; words(\"loads\") lists those of one:\n");
    for (Theme theme : Theme.all()) {
      text.append(String.format(Locale.ROOT, "  %-9s %s\n", theme.key(), theme.about()));
    }
    text.append(
        "help(\"hinge\") tells of a word or a term, help(pull) of a value. lesson() leads\n");
    text.append("through ten steps, examples() has ready code, quit() leaves.\n");
    return new Help(text.append(Caution.TEXT).toString());
  }

  /** All words by theme. */
  static Help words() {
    String all = Theme.all().stream().map(Theme::words).collect(Collectors.joining("\n"));
    return new Help(
        "Everything is Java; these words are there already.\n\n" + all + "\n" + Caution.TEXT);
  }

  /** The words of one theme. */
  static Help words(String key) {
    Theme theme =
        Theme.find(key)
            .orElseThrow(
                () -> {
                  List<String> keys = Theme.all().stream().map(Theme::key).toList();
                  return new Refused(
                      "There is no theme \""
                          + key
                          + "\"; there are "
                          + String.join(", ", keys)
                          + ".");
                });
    return new Help(theme.words() + Caution.TEXT);
  }

  /** A word in quotes, or what can be asked of a value. */
  static Help of(Object topic) {
    if (topic == null) {
      throw new Refused("There is nothing to say about a value that is missing (null).");
    }
    if (topic instanceof Lift<?> lift) {
      return ofLift(lift);
    }
    return topic instanceof CharSequence word ? ofWord(word.toString().strip()) : ofValue(topic);
  }

  /** What a lift is for, how it is set, where its posture comes from, and what it looks like. */
  private static Help ofLift(Lift<?> lift) {
    String text =
        lift.text() + "\nWhat can be said of it:\n" + steps(lift.getClass()) + "\n" + Caution.TEXT;
    return new Help(text, Optional.of(lift.middle().picture()));
  }

  /** The lift that a word begins, for a lifter of usual proportions. */
  private static Optional<Lift<?>> liftOf(String word) {
    Person usual = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
    for (Method method : Vocabulary.class.getMethods()) {
      boolean begins = method.getName().equals(word) && method.getParameterCount() == 1;
      if (begins && Lift.class.isAssignableFrom(method.getReturnType())) {
        try {
          return Optional.of((Lift<?>) method.invoke(null, usual));
        } catch (ReflectiveOperationException e) {
          throw new IllegalStateException(e);
        }
      }
    }
    return Optional.empty();
  }

  private static Help ofWord(String asked) {
    String word = asked.replaceFirst("\\(.*", "").strip();
    if (word.equals("columns")) {
      return new Help(Entries.text("columns.txt") + "\n" + Caution.TEXT);
    }
    List<WordList.Entry> about =
        WordList.entries().stream().filter(e -> e.words().contains(word)).toList();
    Optional<Glossary.Term> term = Glossary.find(word);
    if (!about.isEmpty()) {
      return ofWord(word, about, term);
    }
    if (term.isPresent()) {
      return new Help(term.get().text());
    }
    return Theme.find(word).map(theme -> words(theme.key())).orElseThrow(() -> unknown(word));
  }

  private static Help ofWord(
      String word, List<WordList.Entry> about, Optional<Glossary.Term> term) {
    StringBuilder text = new StringBuilder();
    for (WordList.Entry entry : about) {
      text.append(word).append(": ").append(entry.meaning());
      text.append("\n    ").append(entry.example()).append('\n');
    }
    Arrays.stream(Vocabulary.class.getMethods())
        .filter(m -> m.getName().equals(word) && Modifier.isStatic(m.getModifiers()))
        .map(Help::signature)
        .sorted()
        .forEach(signature -> text.append(signature).append('\n'));
    term.ifPresent(known -> text.append("The term: ").append(known.text()).append('\n'));
    Example.find(word)
        .ifPresent(e -> text.append("Ready code: example(\"").append(e.name()).append("\")\n"));
    Optional<Help> lift = liftOf(word).map(Help::ofLift);
    lift.ifPresent(page -> text.append('\n').append(page.text()));
    return new Help(text.toString().stripTrailing(), lift.flatMap(Help::picture));
  }

  private static Refused unknown(String word) {
    Set<String> known = new TreeSet<>(Glossary.names());
    WordList.entries().forEach(entry -> known.addAll(entry.words()));
    List<String> parts = Nearest.holding(word, known);
    List<String> near = parts.isEmpty() ? Nearest.of(word, known) : parts;
    return new Refused(
        "There is no word or term \""
            + word
            + "\" to explain. "
            + (near.isEmpty() ? "" : "Nearest: " + String.join(", ", near) + ". ")
            + "help() tells what there is, glossary() lists the terms.");
  }

  private static Help ofValue(Object value) {
    Class<?> type = value.getClass();
    return new Help("A " + type.getSimpleName() + " can be asked:\n" + steps(type));
  }

  private static String steps(Class<?> type) {
    return Arrays.stream(type.getMethods())
        .filter(m -> !Modifier.isStatic(m.getModifiers()) && !m.isSynthetic())
        .filter(m -> !m.getDeclaringClass().getName().startsWith("java."))
        .filter(m -> !UNTOLD.contains(m.getName()))
        .map(m -> "  ." + signature(m))
        .distinct()
        .sorted()
        .collect(Collectors.joining("\n"));
  }

  private static String signature(Method method) {
    String parameters =
        Arrays.stream(method.getParameters())
            .map(p -> name(p.getParameterizedType()) + " " + p.getName())
            .collect(Collectors.joining(", "));
    // A setting of a lift gives the lift again, a choice among people a group.
    String given =
        method.getGenericReturnType() instanceof TypeVariable
            ? method.getDeclaringClass() == Choosing.class
                ? "the narrowed group"
                : "the changed lift"
            : name(method.getGenericReturnType());
    return method.getName() + "(" + parameters + ")" + (given.equals("void") ? "" : ": " + given);
  }

  private static String name(Type type) {
    return type.getTypeName().replaceAll("\\b(?:[a-z][a-z0-9_]*\\.)+|\\w+\\$", "");
  }

  @Override
  public Optional<String> svg() {
    return picture.flatMap(Picture::svg);
  }

  @Override
  public Optional<byte[]> png() {
    return picture.flatMap(Picture::png);
  }

  @Override
  public String toString() {
    return text;
  }
}
