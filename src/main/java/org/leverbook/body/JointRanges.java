package org.leverbook.body;

import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;

/**
 * Joint ranges of a healthy adult, from {@code body/joint_rom.csv}.
 *
 * <p>The file's default limit is used, which stands beside the published values there, but for hip
 * flexion: under a bar the weight of trunk and bar presses the hip into flexion as it presses the
 * ankle, so its range ends where it ended when somebody else moved the leg: the passive mean of men
 * or of women from 20 to 44 years (Soucie et al. 2011, from memory). The active range of the
 * American Academy of Orthopaedic Surgeons, 120 degrees, ends before it. The doubt: a mean is not
 * an end, both are measured with bent knees and take some turning of the pelvis for flexion.
 */
final class JointRanges {

  private static final Lookup TABLE =
      new Lookup(DataTable.read("body/joint_rom.csv"), "joint", "motion");

  private JointRanges() {}

  /** The default limit of a motion, radians, always positive. */
  static double limit(String joint, String motion) {
    return Math.toRadians(number(joint, motion, "default_limit_deg"));
  }

  /** The mean passive range of men or women from 20 to 44 years, radians. */
  static double passive(String joint, String motion, Sex sex) {
    return Math.toRadians(number(joint, motion, "soucie_" + sex.word() + "_20_44_deg"));
  }

  private static double number(String joint, String motion, String column) {
    return TABLE.row(joint, motion).number(column);
  }
}
