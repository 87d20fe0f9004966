package org.leverbook.body;

import java.util.List;

/**
 * Where a load or a pad can take hold of any body, as a coach says it. On one person's body it is a
 * {@link Place}.
 */
public enum Site {
  /** The hand, around a bar or a handle. */
  HAND("hand", true),
  /** High on the upper back, just below the neck, as a bar lies for a squat with upright trunk. */
  UPPER_BACK_HIGH("upper back high", true),
  /** Lower on the upper back, on the shoulder blades. */
  UPPER_BACK_LOW("upper back low", true),
  /** The front of the ribs, level with the upper breast bone, where a chest pad ends above. */
  UPPER_CHEST("upper chest", true),
  /** The front of the ribs, level with the lower end of the breast bone. */
  LOWER_CHEST("lower chest", true),
  /** The back of the ribs below the shoulder blades. */
  MID_BACK("mid back", true),
  /** The skin behind the lumbar spine. */
  LOW_BACK("low back", true),
  /** The rearmost part of the seat. */
  BUTTOCK("buttock", true),
  /** The sitting bones. */
  SITTING_BONE("sitting bone", true),
  /** The back of the thigh, half-way down. */
  BACK_OF_THIGH("back of the thigh", true),
  /** The front of the shin, just below the knee cap, that a kneeling person rests on. */
  KNEE_CAP("knee cap", true),
  /** The front of the shin above the ankle. */
  SHIN("shin", true),
  /** The instep: the top of the foot, that a kneeling person may rest on. */
  INSTEP("instep", true),
  /** The palm near the wrist. */
  HEEL_OF_HAND("heel of the hand", true),
  /** The pads of the palm at the knuckles. */
  BALL_OF_HAND("ball of the hand", true),
  /** The back of the head. */
  BACK_OF_HEAD("back of the head", false),
  /** On the front of the shoulders, against the neck. */
  FRONT_OF_SHOULDER("front of the shoulder", true),
  /** The breast bone. */
  CHEST("chest", false),
  /** The fold in front of the hip. */
  HIP_CREASE("hip crease", true),
  /** Around the waist. */
  WAIST("waist", false),
  /** The front of a belt, where a weight hangs from it. */
  BELT_FRONT("belt front", false),
  /** The back of the upper arm, where it lies on a sloping pad. */
  BACK_OF_ARM("back of the upper arm", true),
  /** The elbow, on the side of the upper arm. */
  ELBOW("elbow", true),
  /** Just above the wrist, on the side of the forearm. */
  FOREARM("forearm", true),
  /** The front of the thigh above the knee. */
  THIGH("thigh", true),
  /** The front of the thigh a hand's breadth below the hip. */
  UPPER_THIGH("upper thigh", true),
  /** Just above the ankle, where a cuff goes. */
  ANKLE("ankle", true),
  /** Under the heel, in the middle of its pressure. */
  HEEL("heel", true),
  /** Under the ball of the foot. */
  BALL_OF_FOOT("ball of the foot", true),
  /** Under the tip of the toes. */
  TOE_TIP("toe tip", true),
  /** Under the middle of the foot. */
  FOOT("foot", true),
  /** The forehead. */
  HEAD("head", false);

  private final String word;
  private final boolean paired;

  Site(String word, boolean paired) {
    this.word = word;
    this.paired = paired;
  }

  /**
   * The site in words, without side.
   *
   * @return as in "hip crease"
   */
  public String word() {
    return word;
  }

  /**
   * Whether there is a left and a right one.
   *
   * @return true for limbs and for what a bar touches on both sides
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
   * The name with a side.
   *
   * @param side left or right for a paired site; ignored for one of the midline
   * @return as in "right hand" or "chest"
   */
  public String on(Side side) {
    return paired ? side.of(word) : word;
  }
}
