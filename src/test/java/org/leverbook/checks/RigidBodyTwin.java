package org.leverbook.checks;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Freedom;
import org.leverbook.body.Segment;
import org.leverbook.body.SegmentTree;
import org.leverbook.load.Force;
import org.leverbook.pose.Frame;
import org.leverbook.pose.MovingPose;
import org.leverbook.pose.Pose;
import us.ihmc.euclid.matrix.Matrix3D;
import us.ihmc.euclid.matrix.RotationMatrix;
import us.ihmc.euclid.referenceFrame.FramePoint3D;
import us.ihmc.euclid.referenceFrame.FrameVector3D;
import us.ihmc.euclid.referenceFrame.ReferenceFrame;
import us.ihmc.euclid.tuple3D.Point3D;
import us.ihmc.mecano.algorithms.InverseDynamicsCalculator;
import us.ihmc.mecano.multiBodySystem.RevoluteJoint;
import us.ihmc.mecano.multiBodySystem.RigidBody;
import us.ihmc.mecano.multiBodySystem.SixDoFJoint;
import us.ihmc.mecano.multiBodySystem.interfaces.JointBasics;
import us.ihmc.mecano.multiBodySystem.interfaces.JointReadOnly;
import us.ihmc.mecano.multiBodySystem.interfaces.RigidBodyBasics;
import us.ihmc.mecano.spatial.Wrench;

/**
 * The same tree built in an independent rigid-body library (us.ihmc:mecano): a joint of several
 * freedoms becomes a chain of revolute joints with weightless links, the root floats freely.
 *
 * <p>Only what describes the tree is shared (centres, axes, masses, centres of mass, angles);
 * frames, places and moments are the library's own work. Its inverse dynamics give what each joint
 * must supply to keep still, the opposite of what Leverbook tells.
 */
final class RigidBodyTwin {

  private static final ReferenceFrame WORLD = ReferenceFrame.getWorldFrame();

  private final SegmentTree tree;
  private final RigidBody ground = new RigidBody("ground", WORLD);
  private final SixDoFJoint root = new SixDoFJoint("root", ground);
  private final List<RigidBodyBasics> bodies = new ArrayList<>();
  private final List<RevoluteJoint> joints = new ArrayList<>();
  private final InverseDynamicsCalculator dynamics;

  RigidBodyTwin(SegmentTree tree) {
    this.tree = tree;
    bodies.add(body(root, tree.segment(0)));
    for (int i = 1; i < tree.size(); i++) {
      Segment segment = tree.segment(i);
      RigidBodyBasics inner = bodies.get(segment.parent());
      Vector3D place = segment.joint().centre();
      List<Freedom> freedoms = segment.joint().freedoms();
      for (int k = 0; k < freedoms.size(); k++) {
        String name = segment.name() + " " + k;
        RevoluteJoint joint =
            new RevoluteJoint(name, inner, point(place), vector(freedoms.get(k).axis()));
        joints.add(joint);
        place = Vector3D.ZERO;
        inner =
            k + 1 < freedoms.size()
                ? new RigidBody(name + " link", joint, new Matrix3D(), 0, new Point3D())
                : body(joint, segment);
      }
      bodies.add(inner);
    }
    dynamics = new InverseDynamicsCalculator(ground);
  }

  private static RigidBody body(JointBasics joint, Segment segment) {
    Vector3D r = segment.radii();
    Matrix3D inertia = new Matrix3D();
    inertia.setM00(segment.mass() * r.getX() * r.getX());
    inertia.setM11(segment.mass() * r.getY() * r.getY());
    inertia.setM22(segment.mass() * r.getZ() * r.getZ());
    return new RigidBody(
        segment.name(), joint, inertia, segment.mass(), point(segment.centreOfMass()));
  }

  /** Takes the pose, the forces and gravity, and works out every joint, held still. */
  void solve(Pose pose, List<Force> forces, Vector3D gravity) {
    solve(MovingPose.still(pose), forces, gravity);
  }

  /** Takes the moving pose, the forces and gravity, and works out every joint. */
  void solve(MovingPose moving, List<Force> forces, Vector3D gravity) {
    Pose pose = moving.pose();
    Frame frame = pose.rootFrame();
    RotationMatrix turned =
        new RotationMatrix(
            frame.x().getX(),
            frame.y().getX(),
            frame.z().getX(),
            frame.x().getY(),
            frame.y().getY(),
            frame.z().getY(),
            frame.x().getZ(),
            frame.y().getZ(),
            frame.z().getZ());
    root.setJointOrientation(turned);
    root.setJointPosition(point(pose.rootPlace()));
    for (int i = 0; i < joints.size(); i++) {
      joints.get(i).setQ(pose.angle(i));
      joints.get(i).setQd(moving.rate(i));
      joints.get(i).setQdd(moving.acceleration(i));
    }
    move(moving.root(), frame);
    ground.updateFramesRecursively();
    dynamics.setGravitationalAcceleration(gravity.getX(), gravity.getY(), gravity.getZ());
    dynamics.setExternalWrenchesToZero();
    for (Force force : forces) {
      RigidBodyBasics body = bodies.get(force.segment());
      ReferenceFrame own = body.getBodyFixedFrame();
      FramePoint3D at = new FramePoint3D(WORLD, point(force.point()));
      FrameVector3D pull = new FrameVector3D(WORLD, vector(force.force()));
      FrameVector3D twist = new FrameVector3D(WORLD, vector(force.moment()));
      at.changeFrame(own);
      pull.changeFrame(own);
      twist.changeFrame(own);
      Wrench wrench = new Wrench(own, own);
      wrench.set(twist, pull, at);
      dynamics.getExternalWrench(body).add(wrench);
    }
    dynamics.compute();
  }

  /**
   * The root's motion in its own axes. The library's linear acceleration is the rate of change of
   * the velocity as the turning body sees it: what the world sees, less w x v.
   */
  private void move(MovingPose.Root motion, Frame frame) {
    Vector3D w = frame.toLocal(motion.turning());
    Vector3D v = frame.toLocal(motion.velocity());
    Vector3D seen = frame.toLocal(motion.acceleration()).subtract(w.crossProduct(v));
    root.getJointTwist().getAngularPart().set(vector(w));
    root.getJointTwist().getLinearPart().set(vector(v));
    root.getJointAcceleration().getAngularPart().set(vector(frame.toLocal(motion.turningUp())));
    root.getJointAcceleration().getLinearPart().set(vector(seen));
  }

  /** What the joint of a segment supplies: moment about its centre, and force, in the world. */
  Wrench supplied(int segment) {
    JointReadOnly joint = bodies.get(segment).getParentJoint();
    Wrench wrench = new Wrench(dynamics.getComputedJointWrench(joint));
    wrench.changeFrame(joint.getFrameAfterJoint());
    return wrench;
  }

  Vector3D moment(int segment) {
    FrameVector3D moment = new FrameVector3D(supplied(segment).getAngularPart());
    moment.changeFrame(WORLD);
    return new Vector3D(moment.getX(), moment.getY(), moment.getZ());
  }

  Vector3D force(int segment) {
    FrameVector3D force = new FrameVector3D(supplied(segment).getLinearPart());
    force.changeFrame(WORLD);
    return new Vector3D(force.getX(), force.getY(), force.getZ());
  }

  /** What one freedom's motor would supply, newton metres. */
  double about(int angle) {
    return dynamics.getComputedJointTau(joints.get(angle)).get(0);
  }

  /** Where the library has a joint, in the world. */
  Vector3D place(int segment) {
    FramePoint3D place =
        new FramePoint3D(bodies.get(segment).getParentJoint().getFrameAfterJoint());
    place.changeFrame(WORLD);
    return new Vector3D(place.getX(), place.getY(), place.getZ());
  }

  SegmentTree tree() {
    return tree;
  }

  private static Point3D point(Vector3D v) {
    return new Point3D(v.getX(), v.getY(), v.getZ());
  }

  private static us.ihmc.euclid.tuple3D.Vector3D vector(Vector3D v) {
    return new us.ihmc.euclid.tuple3D.Vector3D(v.getX(), v.getY(), v.getZ());
  }
}
