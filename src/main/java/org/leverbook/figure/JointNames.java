package org.leverbook.figure;

import org.leverbook.body.JointId;

/** What a coach calls a joint in a picture. */
final class JointNames {

  private JointNames() {}

  /**
   * A joint's name, with its region where a level alone would not tell a beginner.
   *
   * @param joint which
   * @return as in "low back (L5/S1)" or "hip (each side)"
   */
  static String of(JointId joint) {
    return switch (joint) {
      case L5_S1 -> "low back (L5/S1)";
      case T7_T8 -> "mid back (T7/T8)";
      default -> joint.paired() ? joint.word() + " (each side)" : joint.word();
    };
  }
}
