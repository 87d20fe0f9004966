package org.leverbook.body;

/** A way to move a joint, with the words for either direction. */
public enum Motion {
  /** Bending forward, or closing the joint; the knee's is backward. */
  FLEXION("flexion", "flex", "extend", "flexors", "extensors"),
  /** Away from the midline. */
  ABDUCTION("abduction", "abduct", "adduct", "abductors", "adductors"),
  /** About the long axis, front towards the midline. */
  ROTATION("rotation", "rotate inward", "rotate outward", "internal rotators", "external rotators"),
  /** Foot towards the shin. */
  DORSIFLEXION("flexion", "dorsiflex", "plantarflex", "dorsiflexors", "plantarflexors"),
  /** Sole away from the midline. */
  EVERSION("abduction", "evert", "invert", "evertors", "invertors"),
  /** The spine to the person's right. */
  SIDE_BENDING(
      "abduction",
      "bend to the right",
      "bend to the left",
      "right side benders",
      "left side benders"),
  /** The spine's front to the person's left. */
  TURNING("rotation", "turn to the left", "turn to the right", "left turners", "right turners"),
  /** The hand towards the little finger. */
  ULNAR_DEVIATION(
      "abduction", "deviate ulnarly", "deviate radially", "ulnar deviators", "radial deviators"),
  /** The forearm from palm forward to palm backward. */
  PRONATION("rotation", "pronate", "supinate", "pronators", "supinators"),
  /** The shoulder forward around the rib cage. */
  PROTRACTION("rotation", "protract", "retract", "protractors", "retractors"),
  /** The shoulder up. */
  ELEVATION("abduction", "elevate", "depress", "elevators", "depressors"),
  /** The collar bone's front turned up. */
  BACKWARD_ROTATION(
      "flexion", "rotate backward", "rotate forward", "backward rotators", "forward rotators");

  private final String axis;
  private final String positive;
  private final String negative;
  private final String positiveMuscles;
  private final String negativeMuscles;

  Motion(
      String axis,
      String positive,
      String negative,
      String positiveMuscles,
      String negativeMuscles) {
    this.axis = axis;
    this.positive = positive;
    this.negative = negative;
    this.positiveMuscles = positiveMuscles;
    this.negativeMuscles = negativeMuscles;
  }

  /**
   * The anatomical axis it turns about.
   *
   * @return flexion, abduction or rotation
   */
  public String axis() {
    return axis;
  }

  /**
   * The verb for a moment in one direction.
   *
   * @param moment its sign decides; any unit
   * @return as in "flex" or "extend"
   */
  public String verb(double moment) {
    return moment >= 0 ? positive : negative;
  }

  /**
   * The muscle action that opposes a moment.
   *
   * @param moment its sign decides; any unit
   * @return as in "extensors" against a moment that flexes
   */
  public String opposedBy(double moment) {
    return moment >= 0 ? negativeMuscles : positiveMuscles;
  }

  /**
   * The movement that a moment makes, as a noun.
   *
   * @param moment its sign decides; any unit
   * @return as in "flexion" or "extension"
   */
  public String noun(double moment) {
    boolean up = moment >= 0;
    return switch (this) {
      case FLEXION -> up ? "flexion" : "extension";
      case ABDUCTION -> up ? "abduction" : "adduction";
      case ROTATION -> up ? "internal rotation" : "external rotation";
      case DORSIFLEXION -> up ? "dorsiflexion" : "plantarflexion";
      case EVERSION -> up ? "eversion" : "inversion";
      case SIDE_BENDING -> up ? "bending to the right" : "bending to the left";
      case TURNING -> up ? "turning to the left" : "turning to the right";
      case ULNAR_DEVIATION -> up ? "ulnar deviation" : "radial deviation";
      case PRONATION -> up ? "pronation" : "supination";
      case PROTRACTION -> up ? "protraction" : "retraction";
      case ELEVATION -> up ? "elevation" : "depression";
      case BACKWARD_ROTATION -> up ? "backward rotation" : "forward rotation";
    };
  }
}
