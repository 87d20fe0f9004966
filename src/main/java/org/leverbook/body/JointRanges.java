package org.leverbook.body;

import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;

/**
 * Active joint ranges of a healthy adult, from {@code body/joint_rom.csv}.
 *
 * <p>The printed range of the American Academy of Orthopaedic Surgeons is used for hip flexion;
 * elsewhere the file's default limit, which stands beside the published values there.
 */
final class JointRanges {

  private static final Lookup TABLE =
      new Lookup(DataTable.read("body/joint_rom.csv"), "joint", "motion");

  private JointRanges() {}

  /** The default limit of a motion, radians, always positive. */
  static double limit(String joint, String motion) {
    return Math.toRadians(number(joint, motion, "default_limit_deg"));
  }

  /** The range printed by the American Academy of Orthopaedic Surgeons, radians. */
  static double published(String joint, String motion) {
    return Math.toRadians(number(joint, motion, "aaos_deg"));
  }

  private static double number(String joint, String motion, String column) {
    return TABLE.row(joint, motion).number(column);
  }
}
