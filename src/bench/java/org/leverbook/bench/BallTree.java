package org.leverbook.bench;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Segment;
import org.leverbook.body.SegmentTree;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import us.ihmc.euclid.matrix.Matrix3D;
import us.ihmc.euclid.matrix.RotationMatrix;
import us.ihmc.euclid.referenceFrame.FramePoint3D;
import us.ihmc.euclid.referenceFrame.FrameVector3D;
import us.ihmc.euclid.referenceFrame.ReferenceFrame;
import us.ihmc.euclid.tuple3D.Point3D;
import us.ihmc.mecano.algorithms.InverseDynamicsCalculator;
import us.ihmc.mecano.multiBodySystem.RigidBody;
import us.ihmc.mecano.multiBodySystem.SixDoFJoint;
import us.ihmc.mecano.multiBodySystem.SphericalJoint;
import us.ihmc.mecano.multiBodySystem.interfaces.JointBasics;
import us.ihmc.mecano.multiBodySystem.interfaces.RigidBodyBasics;
import us.ihmc.mecano.spatial.Wrench;
import us.ihmc.mecano.spatial.interfaces.WrenchReadOnly;

/**
 * The baseline: the same tree in a general rigid-body library in its fastest form, one ball joint
 * for each joint whatever its freedoms. Rotations of the joints are prepared beforehand, so it does
 * not even pay for sines.
 */
final class BallTree {

  private final RigidBody ground = new RigidBody("ground", ReferenceFrame.getWorldFrame());
  private final SixDoFJoint root = new SixDoFJoint("root", ground);
  private final List<SphericalJoint> joints = new ArrayList<>();
  private final List<RigidBodyBasics> bodies = new ArrayList<>();
  private final InverseDynamicsCalculator dynamics;
  private final FramePoint3D at = new FramePoint3D();
  private final FrameVector3D pull = new FrameVector3D();
  private final FrameVector3D none = new FrameVector3D();

  BallTree(SegmentTree tree) {
    bodies.add(body(root, tree.segment(0)));
    for (int i = 1; i < tree.size(); i++) {
      Segment segment = tree.segment(i);
      Vector3D c = segment.joint().centre();
      SphericalJoint joint =
          new SphericalJoint(
              segment.name(),
              bodies.get(segment.parent()),
              new Point3D(c.getX(), c.getY(), c.getZ()));
      joints.add(joint);
      bodies.add(body(joint, segment));
    }
    dynamics = new InverseDynamicsCalculator(ground);
    dynamics.setConsiderCoriolisAndCentrifugalForces(false);
    dynamics.setConsiderJointAccelerations(false);
    dynamics.setGravitationalAcceleration(0, -9.80665, 0);
  }

  private static RigidBody body(JointBasics joint, Segment segment) {
    Vector3D c = segment.centreOfMass();
    return new RigidBody(
        segment.name(),
        joint,
        new Matrix3D(),
        segment.mass(),
        new Point3D(c.getX(), c.getY(), c.getZ()));
  }

  /** The rotation of every joint, root first. */
  static RotationMatrix[] rotations(Placement where) {
    RotationMatrix[] rotations = new RotationMatrix[where.tree().size()];
    for (int i = 0; i < rotations.length; i++) {
      int parent = where.tree().segment(i).parent();
      Frame own = where.frame(i);
      Frame seen = parent < 0 ? own : own.relativeTo(where.frame(parent));
      rotations[i] =
          new RotationMatrix(
              seen.x().getX(),
              seen.y().getX(),
              seen.z().getX(),
              seen.x().getY(),
              seen.y().getY(),
              seen.z().getY(),
              seen.x().getZ(),
              seen.y().getZ(),
              seen.z().getZ());
    }
    return rotations;
  }

  /** Pose, frames, inverse dynamics with the given forces, and the size of every joint's moment. */
  double solve(Vector3D place, RotationMatrix[] rotations, int[] held, double[][] forces) {
    root.setJointOrientation(rotations[0]);
    root.getJointPose().getPosition().set(place.getX(), place.getY(), place.getZ());
    for (int i = 1; i < rotations.length; i++) {
      joints.get(i - 1).setJointOrientation(rotations[i]);
    }
    ground.updateFramesRecursively();
    dynamics.setExternalWrenchesToZero();
    for (int k = 0; k < held.length; k++) {
      RigidBodyBasics body = bodies.get(held[k]);
      ReferenceFrame own = body.getBodyFixedFrame();
      at.setToZero(body.getParentJoint().getFrameAfterJoint());
      at.changeFrame(own);
      pull.setIncludingFrame(
          ReferenceFrame.getWorldFrame(), forces[k][0], forces[k][1], forces[k][2]);
      pull.changeFrame(own);
      none.setToZero(own);
      ((Wrench) dynamics.getExternalWrench(body)).set(none, pull, at);
    }
    dynamics.compute();
    double sum = 0;
    for (SphericalJoint joint : joints) {
      WrenchReadOnly wrench = dynamics.getComputedJointWrench(joint);
      sum += wrench.getAngularPart().norm();
    }
    return sum;
  }
}
