package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * One of those compared.
 *
 * @param <T> what it is: one position, or a whole way
 * @param name what to call it
 * @param given as it was given; null where there was nothing already
 * @param shown with the load it is compared at; null where there is none
 * @param reason why there is none; empty where there is one
 */
record Entrant<T>(String name, Weighed<T> given, T shown, String reason) {

  private static final int MOST = 12;

  static <T> Entrant<T> of(String name, Weighed<T> given) {
    return new Entrant<>(name, given, given.times(1), "");
  }

  Entrant<T> called(String other) {
    return new Entrant<>(other, given, shown, reason);
  }

  private Entrant<T> by(LoadRule rule) {
    if (given == null) {
      return this;
    }
    try {
      return new Entrant<>(name, given, given.times(rule.times().applyAsDouble(given)), "");
    } catch (Refused e) {
      return new Entrant<>(name, given, null, e.getMessage());
    }
  }

  /** Checks how many there are. */
  static void counted(int many, String what, String example) {
    if (many < 2 || many > MOST) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A comparison takes 2 to %d %s, not %d: %s.",
              MOST,
              what,
              many,
              many < 2 ? "give another, as in " + example : "leave some for a second comparison"));
    }
  }

  static <T> List<Entrant<T>> by(LoadRule rule, List<Entrant<T>> all) {
    List<Entrant<T>> weighed = new ArrayList<>();
    int done =
        Many.each(
            "loads of the comparison",
            all.size(),
            i -> all.get(i).by(rule),
            (i, entrant) -> weighed.add(entrant));
    if (done < all.size()) {
      throw new Refused("Stopped before all loads of the comparison were found.");
    }
    return weighed;
  }

  /** The names that a coach gave, checked. */
  static <T> List<Entrant<T>> called(List<Entrant<T>> all, String... names) {
    if (names.length != all.size()) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "%d are compared, but .called(…) gives %d names: give one for each, in their order.",
              all.size(),
              names.length));
    }
    List<String> said = new ArrayList<>();
    for (String name : names) {
      String plain = Ask.present("name", name, "\"chest on the pad\"").strip();
      if (plain.isEmpty() || said.contains(plain)) {
        throw new Refused(
            plain.isEmpty()
                ? "A name is empty: say what to call it, as in \"chest on the pad\"."
                : "Two are called \"" + plain + "\": give each its own name.");
      }
      said.add(plain);
    }
    List<Entrant<T>> called = new ArrayList<>();
    for (int i = 0; i < names.length; i++) {
      called.add(all.get(i).called(said.get(i)));
    }
    return called;
  }

  private static <T> Weighed<T> first(List<Entrant<T>> all) {
    Entrant<T> first = all.get(0);
    if (first.given == null) {
      throw new Refused(
          "The others cannot be measured by the first, "
              + first.name
              + ", which could not be done itself: "
              + first.reason
              + " Say a size yourself, as in .atEqualLoad(kg(60)).");
    }
    return first.given;
  }

  static <T> LoadRule equalLoad(List<Entrant<T>> all) {
    return LoadRule.equalLoad(LoadRule.counted(first(all).mainLoad()));
  }

  static LoadRule equalLoad(Quantity<Mass> mass) {
    return LoadRule.equalLoad(Ask.mass("load of all", mass, 0.1, 1000));
  }

  static <T> LoadRule equalEffort(List<Entrant<T>> all) {
    return LoadRule.equalEffort(first(all).effort());
  }

  static LoadRule equalEffort(Quantity<Dimensionless> share) {
    return LoadRule.equalEffort(Ask.share("effort of each limiter", share, 0.01, 1.5));
  }

  static LoadRule shareOfLargest(Quantity<Dimensionless> share) {
    return LoadRule.shareOfLargest(Ask.share("share of each largest load", share, 0.01, 1.5));
  }
}
