package org.leverbook.body;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.leverbook.data.DataTable;
import org.leverbook.quantity.Refused;

/**
 * The joint-to-joint lengths of one person, metres, standing.
 *
 * <p>Usual lengths are fractions of stature from {@code body/links_from_ansur.csv} (survey means of
 * ANSUR II, Gordon et al. 2014, with joint-centre rules named there); the vertical ones add up to
 * stature. Changes of a {@link Person} are applied by the rules of its Javadoc.
 *
 * @param stature all vertical links together
 * @param footHeight floor to ankle centre
 * @param shank ankle to knee
 * @param thigh knee to hip
 * @param pelvisUp hip axis to L5/S1, vertical
 * @param pelvisBack hip axis to L5/S1, backward
 * @param spine L5/S1 to C7/T1, vertical
 * @param neck C7/T1 to C0/C1, vertical
 * @param head C0/C1 to vertex, vertical
 * @param upperArm shoulder to elbow
 * @param forearm elbow to wrist
 * @param grip wrist to the centre of a gripped bar
 * @param fingertip wrist to fingertip
 * @param shoulderHalfWidth midline to shoulder
 * @param hipHalfWidth midline to hip
 * @param footLength heel to toe
 * @param footBreadth greatest breadth of the foot
 */
public record Links(
    double stature,
    double footHeight,
    double shank,
    double thigh,
    double pelvisUp,
    double pelvisBack,
    double spine,
    double neck,
    double head,
    double upperArm,
    double forearm,
    double grip,
    double fingertip,
    double shoulderHalfWidth,
    double hipHalfWidth,
    double footLength,
    double footBreadth) {

  /** Fractions of stature, by sex and link. */
  private static final Map<Sex, Map<String, Double>> FRACTIONS = fractions();

  /** The parts that give or take when stature must stay. */
  private static final List<Part> GIVING = List.of(Part.SHANK, Part.THIGH, Part.TRUNK);

  /**
   * The usual lengths at a stature.
   *
   * @param sex whose survey means
   * @param stature metres
   * @return the lengths
   */
  static Links usual(Sex sex, double stature) {
    return scaled(sex, stature, Map.of(), 1);
  }

  /**
   * The lengths of a person.
   *
   * @param person sex, stature and changes
   * @return the lengths
   * @throws Refused if stature cannot stay because every part that could give was changed
   */
  public static Links of(Person person) {
    Links links = ofLengths(person, person.variation().lengths(person.changes()));
    return person.variation().sizes().isEmpty() ? links : links.moved(person.variation());
  }

  private static Links ofLengths(Person person, Map<Part, Double> changes) {
    Links asked = scaled(person.sex(), person.metres(), changes, 1);
    double excess = asked.stature - person.metres();
    if (person.statureChanges() || Math.abs(excess) < 1e-12) {
      return asked;
    }
    double giving =
        GIVING.stream()
            .filter(part -> !changes.containsKey(part))
            .mapToDouble(asked::lengthOf)
            .sum();
    if (giving < 1e-9) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "With shanks, thighs and trunk all changed, stature cannot stay %.1f cm: it would be %.1f cm. Leave one"
                  + " of them free, or add .statureFollows().",
              100 * person.metres(),
              100 * asked.stature));
    }
    double factor = 1 - excess / giving;
    if (factor < 0.7 || factor > 1.4) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "To keep stature at %.1f cm the unchanged parts would need %.0f %% of their usual length. Change less, or"
                  + " add .statureFollows().",
              100 * person.metres(),
              100 * factor));
    }
    return scaled(person.sex(), person.metres(), changes, factor);
  }

  /**
   * The length of a part.
   *
   * @param part which
   * @return metres
   */
  public double lengthOf(Part part) {
    return switch (part) {
      case FOOT -> footLength;
      case SHANK -> shank;
      case THIGH -> thigh;
      case TRUNK -> pelvisUp + spine;
      case NECK -> neck;
      case UPPER_ARM -> upperArm;
      case FOREARM -> forearm;
      case HAND -> fingertip;
      case SHOULDER_WIDTH -> shoulderHalfWidth;
      case HIP_WIDTH -> hipHalfWidth;
    };
  }

  /**
   * Shoulder to grip with a straight arm.
   *
   * @return metres
   */
  public double reach() {
    return upperArm + forearm + grip;
  }

  /**
   * Height of the hip axis, standing.
   *
   * @return metres
   */
  public double standingHipHeight() {
    return footHeight + shank + thigh;
  }

  private static Map<Sex, Map<String, Double>> fractions() {
    Map<Sex, Map<String, Double>> fractions = new EnumMap<>(Sex.class);
    DataTable table = DataTable.read("body/links_from_ansur.csv");
    for (Sex sex : Sex.values()) {
      fractions.put(
          sex,
          table.rows().stream()
              .filter(row -> row.is("sex", sex.word()))
              .collect(
                  Collectors.toUnmodifiableMap(
                      row -> row.text("link"), row -> row.number("fraction_of_stature"))));
    }
    return fractions;
  }

  /** The same body with the centres of some joints elsewhere. */
  private Links moved(Variation v) {
    double knee = v.shift(Variation.Trait.JOINT_UP, "knee");
    double up =
        v.shift(Variation.Trait.JOINT_UP, "L5/S1") - v.shift(Variation.Trait.JOINT_UP, "hip");
    double back =
        v.shift(Variation.Trait.JOINT_FORWARD, "hip")
            - v.shift(Variation.Trait.JOINT_FORWARD, "L5/S1");
    double top = v.shift(Variation.Trait.JOINT_UP, "C7/T1");
    return new Links(
        stature + up + top,
        footHeight,
        shank + knee,
        thigh - knee,
        pelvisUp + up,
        pelvisBack + back,
        spine + top,
        neck,
        head,
        upperArm,
        forearm,
        grip + v.shift(Variation.Trait.JOINT_UP, "grip"),
        fingertip,
        shoulderHalfWidth,
        hipHalfWidth,
        footLength,
        footBreadth);
  }

  private static Links scaled(Sex sex, double stature, Map<Part, Double> changes, double rest) {
    Reader read = new Reader(sex, stature, changes, rest);
    double footHeight = read.link("foot_height", Part.FOOT);
    double shank = read.link("shank", Part.SHANK);
    double thigh = read.link("thigh", Part.THIGH);
    double pelvisUp = read.link("pelvis_up", Part.TRUNK);
    double spine = read.link("spine_L5S1_C7T1", Part.TRUNK);
    double neck = read.link("neck_C7T1_C0C1", Part.NECK);
    // The survey's links close to within 1e-4 of stature; the head takes that rounding.
    double others =
        read.usual("foot_height")
            + read.usual("shank")
            + read.usual("thigh")
            + read.usual("pelvis_up")
            + read.usual("spine_L5S1_C7T1")
            + read.usual("neck_C7T1_C0C1");
    double head = stature - others;
    return new Links(
        footHeight + shank + thigh + pelvisUp + spine + neck + head,
        footHeight,
        shank,
        thigh,
        pelvisUp,
        read.link("pelvis_back", Part.TRUNK),
        spine,
        neck,
        head,
        read.link("upper_arm", Part.UPPER_ARM),
        read.link("forearm", Part.FOREARM),
        read.link("hand_to_grip", Part.HAND),
        read.link("hand_to_fingertip", Part.HAND),
        read.link("shoulder_half_width", Part.SHOULDER_WIDTH),
        read.link("hip_half_width", Part.HIP_WIDTH),
        read.link("foot_length", Part.FOOT),
        read.link("foot_breadth", Part.FOOT));
  }

  /** Reads one person's links from the table. */
  private record Reader(Sex sex, double stature, Map<Part, Double> changes, double rest) {

    double usual(String link) {
      return stature * FRACTIONS.get(sex).get(link);
    }

    double link(String link, Part part) {
      Double change = changes.get(part);
      double factor = change != null ? change : GIVING.contains(part) ? rest : 1;
      return factor * usual(link);
    }
  }
}
