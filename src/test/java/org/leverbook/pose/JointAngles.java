package org.leverbook.pose;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Freedom;
import org.leverbook.body.Joint;

/**
 * Reads joint angles out of a rotation: the inverse of turning flexion first, then abduction, then
 * rotation.
 *
 * <p>For a joint with freedoms about ±Z, ±X, ±Y in this order the rotation is R = Rz(f) Rx(a)
 * Ry(r), and with R's columns x, y, z: sin a = z-component of y, tan f = -y.x / y.y, tan r = -x.z /
 * z.z (worked out from the product; unique for |a| below 90 degrees).
 */
public final class JointAngles {

  private JointAngles() {}

  /**
   * The angles of a joint that turns about Z, X, Y.
   *
   * @param joint its freedoms; one to three of them, in that order
   * @param distal the distal frame seen from the proximal one
   * @return one angle for each freedom, radians; what the joint cannot turn is left out
   */
  public static double[] of(Joint joint, Frame distal) {
    double abduction = Math.asin(clip(distal.y().getZ()));
    double flexion = Math.atan2(-distal.y().getX(), distal.y().getY());
    double rotation = Math.atan2(-distal.x().getZ(), distal.z().getZ());
    List<Freedom> freedoms = joint.freedoms();
    double[] angles = new double[freedoms.size()];
    for (int k = 0; k < angles.length; k++) {
      Vector3D axis = freedoms.get(k).axis();
      angles[k] = axis.dotProduct(new Vector3D(abduction, rotation, flexion));
    }
    return angles;
  }

  private static double clip(double sine) {
    return Math.max(-1, Math.min(1, sine));
  }
}
