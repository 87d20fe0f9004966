package org.leverbook.body;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The joints of the body by name, as a coach asks for them. */
public enum JointId {
  /** Hip. */
  HIP("hip", true, "hip"),
  /** Knee. */
  KNEE("knee", true, "knee"),
  /** Ankle, with the motion of the hindfoot. */
  ANKLE("ankle", true, "ankle"),
  /** Ball of the foot: the toes' base joints as one. */
  BALL("ball of the foot", true, "toe"),
  /** Sacrum to fifth lumbar vertebra: the low back. */
  L5_S1("L5/S1", false, "trunk"),
  /** Low back. */
  L4_L5("L4/L5", false, "trunk"),
  /** Low back. */
  L3_L4("L3/L4", false, "trunk"),
  /** Low back. */
  L2_L3("L2/L3", false, "trunk"),
  /** Low back. */
  L1_L2("L1/L2", false, "trunk"),
  /** Where the rib cage begins. */
  T12_L1("T12/L1", false, "trunk"),
  /** Thoracic spine. */
  T11_T12("T11/T12", false, "trunk"),
  /** Thoracic spine. */
  T10_T11("T10/T11", false, "trunk"),
  /** Thoracic spine. */
  T9_T10("T9/T10", false, "trunk"),
  /** Thoracic spine. */
  T8_T9("T8/T9", false, "trunk"),
  /** Mid back. */
  T7_T8("T7/T8", false, "trunk"),
  /** Thoracic spine. */
  T6_T7("T6/T7", false, "trunk"),
  /** Thoracic spine. */
  T5_T6("T5/T6", false, "trunk"),
  /** Thoracic spine. */
  T4_T5("T4/T5", false, "trunk"),
  /** Thoracic spine. */
  T3_T4("T3/T4", false, "trunk"),
  /** Thoracic spine. */
  T2_T3("T2/T3", false, "trunk"),
  /** Thoracic spine; the arms hang from T1. */
  T1_T2("T1/T2", false, "trunk"),
  /** Base of the neck. */
  C7_T1("C7/T1", false, "neck"),
  /** Neck. */
  C6_C7("C6/C7", false, "neck"),
  /** Neck. */
  C5_C6("C5/C6", false, "neck"),
  /** Neck. */
  C4_C5("C4/C5", false, "neck"),
  /** Neck. */
  C3_C4("C3/C4", false, "neck"),
  /** Neck. */
  C2_C3("C2/C3", false, "neck"),
  /** Neck. */
  C1_C2("C1/C2", false, "neck"),
  /** Head on the atlas. */
  HEAD("C0/C1", false, "neck"),
  /** Sternoclavicular joint, which carries the shoulder. */
  SHOULDER_GIRDLE("shoulder girdle", true, "shoulder girdle"),
  /** Shoulder (glenohumeral) joint. */
  SHOULDER("shoulder", true, "shoulder"),
  /** Elbow. */
  ELBOW("elbow", true, "elbow"),
  /** Rotation of the forearm. */
  FOREARM("forearm", true, "forearm"),
  /** Wrist. */
  WRIST("wrist", true, "wrist"),
  /** Centre of a gripped bar. */
  GRIP("grip", true, "finger");

  private final String word;
  private final boolean paired;
  private final String muscles;
  private final String[] names;

  JointId(String word, boolean paired, String muscles) {
    this.word = word;
    this.paired = paired;
    this.muscles = muscles;
    this.names =
        Arrays.stream(Side.values())
            .map(side -> paired ? side.of(word) : word)
            .toArray(String[]::new);
  }

  /**
   * The joint's name without side.
   *
   * @return as in "hip" or "L5/S1"
   */
  public String word() {
    return word;
  }

  /**
   * Whether there is a left and a right one.
   *
   * @return true for limb joints
   */
  public boolean paired() {
    return paired;
  }

  /**
   * The sides on which there is one.
   *
   * @return right and left where it is paired, otherwise the midline alone
   */
  public List<Side> sides() {
    return paired ? List.of(Side.RIGHT, Side.LEFT) : List.of(Side.MIDLINE);
  }

  /**
   * Whose action moves it.
   *
   * @return as in "hip" for "hip extensors"
   */
  public String muscles() {
    return muscles;
  }

  /**
   * The name with a side.
   *
   * @param side left or right for a paired joint; ignored for a joint of the midline
   * @return as in "right hip" or "L5/S1"
   */
  public String on(Side side) {
    return names[side.ordinal()];
  }

  /**
   * Whether it is a joint of the spine from L5/S1 to C7/T1.
   *
   * @return true for the 18 levels
   */
  public boolean spineLevel() {
    return compareTo(L5_S1) >= 0 && compareTo(C7_T1) <= 0;
  }

  /**
   * The levels of the spine from L5/S1 up to C7/T1.
   *
   * @return 18 joints, from below
   */
  public static List<JointId> spine() {
    return Arrays.stream(values()).filter(JointId::spineLevel).toList();
  }

  /**
   * The joints of the spine, neck and head, from below.
   *
   * @return 25 joints
   */
  static List<JointId> column() {
    List<JointId> column =
        new ArrayList<>(List.of(values()).subList(L5_S1.ordinal(), HEAD.ordinal() + 1));
    return List.copyOf(column);
  }
}
