package org.leverbook.statics;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.SegmentTree;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.muscle.JointLoads;
import org.leverbook.pose.Placement;

/** What a held position asks of its joints, summed over all sources. */
final class AskedLoads implements JointLoads {

  private final Vector3D[] forces;
  private final Vector3D[] moments;
  private final double[] about;

  AskedLoads(Placement where, List<Force> acting) {
    NetLoads net = NetLoads.of(where, acting, Gravity.VECTOR);
    SegmentTree tree = where.tree();
    forces = new Vector3D[tree.size()];
    moments = new Vector3D[tree.size()];
    about = new double[tree.angles()];
    for (int i = 0; i < tree.size(); i++) {
      forces[i] = net.force(i);
      moments[i] = net.moment(i);
      for (int angle = tree.firstAngle(i); angle < tree.firstAngle(i + 1); angle++) {
        about[angle] = moments[i].dotProduct(where.axis(angle));
      }
    }
  }

  @Override
  public double about(int treeAngle) {
    return about[treeAngle];
  }

  @Override
  public Vector3D force(int segment) {
    return forces[segment];
  }

  @Override
  public Vector3D moment(int segment) {
    return moments[segment];
  }
}
