package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.leverbook.body.Links;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.quantity.Si;

/**
 * What may tell holders of a claim from its exceptions: the person's sizes, the lift, the setting,
 * the load. Inputs that are the same in all cases are left out.
 */
final class ClaimInputs {

  /** Names and units of a person's numbers, in the order of {@link #measures}. */
  private static final String[][] PERSON = {
    {"sex", ""},
    {"body mass", "kg"},
    {"stature", "cm"},
    {"mass for stature", "kg/m²"},
    {"thigh", "% of stature"},
    {"shank", "% of stature"},
    {"trunk", "% of stature"},
    {"upper arm", "% of stature"},
    {"forearm", "% of stature"},
    {"hand", "% of stature"},
    {"foot", "% of stature"},
    {"shoulder width", "% of stature"},
    {"hip width", "% of stature"},
    {"thigh to shank", "%"},
    {"thigh to trunk", "%"},
    {"arm to trunk", "%"},
    {"age", "years"},
    {"training", "1 to 3"},
  };

  /** Less spread than this, as a share of the value, is rounding. */
  private static final double SAME = 1e-4;

  /**
   * One input.
   *
   * @param name as in "thigh"
   * @param unit as in "% of stature"; empty for a yes or no
   * @param yes what 1 says of a yes or no, as in "a man"; empty for a number
   * @param no what 0 says; empty for a number
   * @param values from a case to its value
   */
  record Input(String name, String unit, String yes, String no, Values values) {

    boolean yesOrNo() {
      return !yes.isEmpty();
    }

    double of(int number) {
      return values.of(number);
    }
  }

  /** From a case's number to a value. */
  @FunctionalInterface
  interface Values {
    float of(int number);
  }

  private ClaimInputs() {}

  /** How many numbers a person has. */
  static int size() {
    return PERSON.length;
  }

  /** A person's numbers. */
  static float[] measures(Person who) {
    Links links = who.body().links();
    double mass = Si.kilograms(who.mass());
    double stature = Si.metres(who.stature());
    double trunk = links.pelvisUp() + links.spine();
    double arm = links.upperArm() + links.forearm() + links.grip();
    double share = 100 / stature;
    return new float[] {
      who.sex() == Sex.MALE ? 1 : 0,
      (float) mass,
      (float) (100 * stature),
      (float) (mass / (stature * stature)),
      (float) (share * links.thigh()),
      (float) (share * links.shank()),
      (float) (share * trunk),
      (float) (share * links.upperArm()),
      (float) (share * links.forearm()),
      (float) (share * links.fingertip()),
      (float) (share * links.footLength()),
      (float) (2 * share * links.shoulderHalfWidth()),
      (float) (2 * share * links.hipHalfWidth()),
      (float) (100 * links.thigh() / links.shank()),
      (float) (100 * links.thigh() / trunk),
      (float) (100 * arm / trunk),
      who.condition().years(),
      who.condition().training().ordinal() + 1,
    };
  }

  /** The name of one of a person's numbers with its unit. */
  static String heading(int measure) {
    String unit = PERSON[measure][1];
    return unit.isEmpty() ? PERSON[measure][0] : PERSON[measure][0] + " (" + unit + ")";
  }

  /** All inputs that differ between cases, in a fixed order. */
  static List<Input> of(ClaimCases cases, ClaimLedger ledger) {
    List<Input> inputs = new ArrayList<>();
    for (int m = 0; m < PERSON.length; m++) {
      int measure = m;
      Values values = number -> ledger.measure(cases.personOf(number), measure);
      inputs.add(
          m == 0
              ? new Input("sex", "", "a man", "a woman", values)
              : new Input(PERSON[m][0], PERSON[m][1], "", "", values));
    }
    lifts(cases, inputs);
    settings(cases, inputs);
    inputs.add(new Input("load", "kg", "", "", ledger::load));
    inputs.add(
        new Input(
            "load for body mass",
            "%",
            "",
            "",
            n -> 100 * ledger.load(n) / ledger.measure(cases.personOf(n), 1)));
    return inputs.stream().filter(input -> differs(input, ledger)).toList();
  }

  private static void lifts(ClaimCases cases, List<Input> inputs) {
    for (int lift = 0; lift < cases.lifts().size(); lift++) {
      int which = lift;
      String name = cases.lifts().get(lift);
      inputs.add(
          new Input(
              "lift: " + name,
              "",
              "the lift is " + name,
              "the lift is not " + name,
              n -> cases.liftOf(n) == which ? 1 : 0));
    }
  }

  private static void settings(ClaimCases cases, List<Input> inputs) {
    List<? extends NamedSetting<?>> settings = cases.settings();
    TreeSet<String> groups = new TreeSet<>();
    for (int s = 0; s < settings.size(); s++) {
      int which = s;
      NamedSetting<?> setting = settings.get(s);
      if (setting.value().isPresent()) {
        groups.add(setting.group() + "\n" + setting.unit());
      } else {
        String name = setting.name();
        inputs.add(
            new Input(
                "setting: " + name,
                "",
                "the setting is " + name,
                "the setting is not " + name,
                n -> cases.settingOf(n) == which ? 1 : 0));
      }
    }
    // Only where all settings have a value of one quantity does that value order them.
    if (groups.size() == 1 && settings.stream().allMatch(s -> s.value().isPresent())) {
      NamedSetting<?> first = settings.get(0);
      inputs.add(
          new Input(
              first.group(),
              first.unit(),
              "",
              "",
              n -> (float) settings.get(cases.settingOf(n)).value().orElseThrow()));
    }
  }

  private static boolean differs(Input input, ClaimLedger ledger) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int number = 0; number < ledger.done(); number++) {
      if (ledger.kind(number).tested()) {
        double value = input.of(number);
        least = Math.min(least, value);
        most = Math.max(most, value);
      }
    }
    return most - least > SAME * Math.max(Math.abs(least), Math.abs(most));
  }
}
