package org.leverbook.study;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.statics.Position;

/**
 * The cases a claim is tested on: every person with every lift in every setting, people slowest. A
 * case is a number; its positions are made anew whenever they are asked for.
 */
final class ClaimCases {

  /** More would not fit as numbers into the memory of a small machine. */
  private static final int MOST = 5_000_000;

  /** From a person, a lift's number and a setting's to the first (0) or second (1) position. */
  @FunctionalInterface
  private interface Maker {
    Position position(Person who, int lift, int setting, int which);
  }

  private final List<Person> people;
  private final List<String> lifts;
  private final List<? extends NamedSetting<?>> settings;
  private final Maker maker;

  private ClaimCases(
      List<Person> people,
      List<String> lifts,
      List<? extends NamedSetting<?>> settings,
      Maker maker) {
    this.people = people;
    this.lifts = lifts;
    this.settings = settings;
    this.maker = maker;
    long count = (long) people.size() * lifts.size() * settings.size();
    if (count > MOST) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "%,d people with %,d lifts and %,d settings make %,d cases; at most %,d fit. Take"
                  + " fewer.",
              people.size(),
              lifts.size(),
              settings.size(),
              count,
              MOST));
    }
  }

  /** One position a person. */
  static ClaimCases of(List<Person> people, Function<Person, Position> position) {
    Ask.present("lambda", position, "who -> hinge(who).holding(barbell(kg(60))).start()");
    return new ClaimCases(
        group(people), List.of(""), none(), (who, lift, setting, which) -> position.apply(who));
  }

  /** Two positions a person. */
  static ClaimCases of(
      List<Person> people, Function<Person, Position> first, Function<Person, Position> second) {
    Ask.present("first lambda", first, "who -> hinge(who).hipHeight(cm(55)).start()");
    Ask.present("second lambda", second, "who -> hinge(who).hipHeight(cm(65)).start()");
    return new ClaimCases(
        group(people),
        List.of(""),
        none(),
        (who, lift, setting, which) -> (which == 0 ? first : second).apply(who));
  }

  /** Every lift in every setting. */
  static <L> ClaimCases of(
      List<Person> people, List<NamedLift<L>> lifts, List<NamedSetting<L>> settings) {
    List<NamedLift<L>> asked = some("lifts", lifts, "liftOf(\"squat\", who -> backSquat(who))");
    List<NamedSetting<L>> ways =
        some("settings", settings, "setting(\"bottom\", squat -> squat.finish())");
    return new ClaimCases(
        group(people),
        asked.stream().map(NamedLift::name).toList(),
        ways,
        (who, lift, setting, which) ->
            ways.get(setting).of().apply(asked.get(lift).of().apply(who)));
  }

  /** Every lift in two settings side by side. */
  static <L> ClaimCases of(
      List<Person> people,
      List<NamedLift<L>> lifts,
      NamedSetting<L> first,
      NamedSetting<L> second) {
    List<NamedLift<L>> asked = some("lifts", lifts, "liftOf(\"squat\", who -> backSquat(who))");
    Ask.present("first setting", first, "setting(\"narrow\", press -> press.start())");
    Ask.present("second setting", second, "setting(\"wide\", press -> press.start())");
    return new ClaimCases(
        group(people),
        asked.stream().map(NamedLift::name).toList(),
        none(),
        (who, lift, setting, which) ->
            (which == 0 ? first : second).of().apply(asked.get(lift).of().apply(who)));
  }

  private static List<NamedSetting<Person>> none() {
    return List.of(NamedSetting.of("", who -> null));
  }

  private static List<Person> group(List<Person> people) {
    Ask.present("group of people", people, "people(FEMALE, 500, 1)");
    if (people.isEmpty()) {
      throw new Refused(
          "The group of people is empty, so there is nobody to test the claim on: take a wider"
              + " filter, or people(FEMALE, 500, 1).");
    }
    return people;
  }

  private static <T> List<T> some(String what, List<T> list, String example) {
    if (Ask.present("list of " + what, list, "List.of(" + example + ")").isEmpty()) {
      throw new Refused(
          "The list of " + what + " is empty: give one at least, as in List.of(" + example + ").");
    }
    return List.copyOf(list);
  }

  int count() {
    return people.size() * lifts.size() * settings.size();
  }

  List<Person> people() {
    return people;
  }

  List<String> lifts() {
    return lifts;
  }

  List<? extends NamedSetting<?>> settings() {
    return settings;
  }

  /** Whose number in the group it is. */
  int personOf(int number) {
    return number / (lifts.size() * settings.size());
  }

  int liftOf(int number) {
    return number / settings.size() % lifts.size();
  }

  int settingOf(int number) {
    return number % settings.size();
  }

  /** Whether a case is the first of its person. */
  boolean firstOfPerson(int number) {
    return number % (lifts.size() * settings.size()) == 0;
  }

  Person person(int number) {
    return people.get(personOf(number));
  }

  /** A position, made anew; null where a lambda gives none. */
  Position position(int number, int which) {
    return maker.position(person(number), liftOf(number), settingOf(number), which);
  }

  /** A case in words: who, which lift, which setting. */
  String words(int number) {
    Person who = person(number);
    StringBuilder words =
        new StringBuilder(
            String.format(
                Locale.ROOT,
                "person %,d (%s, %.0f kg, %.0f cm)",
                personOf(number) + 1,
                who.sex() == Sex.MALE ? "man" : "woman",
                Si.kilograms(who.mass()),
                100 * Si.metres(who.stature())));
    for (String name : List.of(lifts.get(liftOf(number)), settings.get(settingOf(number)).name())) {
      if (!name.isEmpty()) {
        words.append(", ").append(name);
      }
    }
    return words.toString();
  }
}
