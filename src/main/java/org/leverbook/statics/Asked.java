package org.leverbook.statics;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.muscle.JointLoads;
import org.leverbook.pose.Placement;

/** The sums of a held position as muscles meet them. */
final class Asked implements JointLoads {

  private final Placement where;
  private final JointMoment[] bySegment;

  Asked(Placement where, List<JointMoment> all) {
    this.where = where;
    bySegment = new JointMoment[where.tree().size()];
    for (JointMoment one : all) {
      bySegment[where.tree().distalOf(one.joint().fullName())] = one;
    }
  }

  @Override
  public double about(int angle) {
    int segment = 1;
    while (where.tree().firstAngle(segment + 1) <= angle) {
      segment++;
    }
    return moment(segment).dotProduct(where.axis(angle));
  }

  @Override
  public Vector3D force(int segment) {
    return bySegment[segment].force();
  }

  @Override
  public Vector3D moment(int segment) {
    return bySegment[segment].moment();
  }
}
