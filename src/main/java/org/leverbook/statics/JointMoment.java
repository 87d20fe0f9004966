package org.leverbook.statics;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Joint;
import org.leverbook.body.Motion;
import org.leverbook.display.Shown;

/**
 * What the resistance asks of one joint.
 *
 * <p>Force and moment are those of gravity, loads and supports on everything distal to the joint;
 * muscles and ligaments must give the opposite. The {@link #parts()} tell where the moment comes
 * from. For a joint whose distal side stands on the floor (a leg), the floor's push is passed on to
 * what it carries: of every load and of the body's weight the leg bears the share that its foot has
 * of the vertical push. What then remains of the floor (foot pressing against foot; nothing in the
 * plane of a symmetrical lift) stays under the floor's own name.
 *
 * @param joint which joint
 * @param centre its centre, in the world, metres
 * @param axes its anatomical axes in the world, in the order of its freedoms
 * @param force in the world, newtons
 * @param moment about the centre, in the world, newton metres
 * @param parts by source; their moments add up to {@code moment}
 * @param mainLoad the source whose line of force the arms are taken to; empty when nothing is held
 * @param main which of the axes the moment is told about
 */
public record JointMoment(
    Joint joint,
    Vector3D centre,
    List<Axis> axes,
    Vector3D force,
    Vector3D moment,
    Map<String, Part> parts,
    String mainLoad,
    int main)
    implements Shown {

  /** Below this a moment is rounding, newton metres. */
  private static final double NOTHING = 1e-6;

  /** An axis that takes so many times as much, and so many newton metres more, is told too. */
  private static final double CLEARLY = 1.5;

  private static final double MUCH = 10;

  /**
   * An anatomical axis.
   *
   * @param motion what turning about it is called
   * @param direction unit vector in the world
   */
  public record Axis(Motion motion, Vector3D direction) {}

  /**
   * What one source gives.
   *
   * @param moment in the world, newton metres
   * @param force the source's force whose line the arm is taken to, newtons; zero where it has none
   * @param arm perpendicular distance from the joint's centre to that line, in 3D, metres
   */
  public record Part(Vector3D moment, Vector3D force, double arm) {}

  /** Keeps its own copies. */
  public JointMoment {
    axes = List.copyOf(axes);
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
  }

  /**
   * The moment at a joint of any tree that no floor holds up: a limb, or a lever of a textbook,
   * whose root is held still.
   *
   * @param loads what acts, already summed
   * @param joint the joint's full name, as in "right elbow"
   * @param mainLoad the source that arms are taken to; may be empty
   * @return what the resistance asks of it
   */
  public static JointMoment of(NetLoads loads, String joint, String mainLoad) {
    int distal = loads.where().tree().distalOf(joint);
    return new Partition(loads.where(), loads, "", mainLoad).at(distal);
  }

  /**
   * The moment about the main axis.
   *
   * @return newton metres, zero or more; its direction is told by {@link #tendsTo()}
   */
  public double size() {
    return Math.abs(signed());
  }

  /**
   * The moment about the main axis with its sign.
   *
   * @return newton metres, positive where it tends to turn the joint in the motion's positive
   *     direction
   */
  public double signed() {
    return moment.dotProduct(axes.get(main).direction());
  }

  /**
   * The moment about one anatomical axis.
   *
   * @param axis flexion, abduction or rotation
   * @return newton metres, positive towards that motion; zero where the joint has no such axis
   */
  public double about(String axis) {
    return axes.stream()
        .filter(a -> a.motion().axis().equals(axis))
        .mapToDouble(a -> moment.dotProduct(a.direction()))
        .findFirst()
        .orElse(0);
  }

  /**
   * The whole moment, about no axis in particular.
   *
   * @return newton metres, zero or more
   */
  public double size3d() {
    return moment.getNorm();
  }

  /**
   * Which axis the moment is told about.
   *
   * @return its motion
   */
  public Motion motion() {
    return axes.get(main).motion();
  }

  /**
   * What the resistance tends to do.
   *
   * @return a verb, as in "flex"; "nothing" below a millionth of a newton metre
   */
  public String tendsTo() {
    return size() < NOTHING ? "nothing" : motion().verb(signed());
  }

  /**
   * What opposes it.
   *
   * @return as in "hip extensors"; "nothing" below a millionth of a newton metre
   */
  public String opposedBy() {
    return size() < NOTHING ? "nothing" : joint.muscles() + " " + motion().opposedBy(signed());
  }

  /**
   * The effective arm of the main load about the main axis: that part's moment about the axis over
   * its force. In the plane of a symmetrical lift it is the level distance from the joint to the
   * load's vertical line.
   *
   * @return metres, zero or more; zero when nothing is held
   */
  public double arm() {
    Part part = parts.get(mainLoad);
    if (part == null || part.force().getNorm() == 0) {
      return 0;
    }
    return Math.abs(part.moment().dotProduct(axes.get(main).direction())) / part.force().getNorm();
  }

  /**
   * The {@link #arm()} with its sign.
   *
   * @return metres, negative where the main load tends to turn the joint in the motion's negative
   *     direction (to extend it)
   */
  public double signedArm() {
    Part part = parts.get(mainLoad);
    boolean negative = part != null && part.moment().dotProduct(axes.get(main).direction()) < 0;
    return negative ? -arm() : arm();
  }

  /**
   * The perpendicular distance from the joint's centre to the main load's line of force.
   *
   * @return metres in 3D, zero or more; zero when nothing is held
   */
  public double arm3d() {
    Part part = parts.get(mainLoad);
    return part == null ? 0 : part.arm();
  }

  /**
   * How much of {@link #size()} comes from one source.
   *
   * @param source as in "bar" or "body weight"
   * @return newton metres; negative where the source works against the whole; zero where it gives
   *     nothing
   */
  public double from(String source) {
    Part part = parts.get(source);
    double direction = signed() < 0 ? -1 : 1;
    return part == null ? 0 : direction * part.moment().dotProduct(axes.get(main).direction());
  }

  /**
   * The same moment about another axis, where that takes clearly more of it: abduction, at the
   * shoulder of a raise to the side. Of axes about which the joint turns; what is asked of a knee
   * sideways, bone and ligament hold.
   *
   * @return told about that axis; empty where none takes half as much again and ten newton metres
   *     more
   */
  public Optional<JointMoment> elsewhere() {
    int most = main;
    for (int k = 0; k < axes.size(); k++) {
      boolean turns = joint.freedoms().get(k).high() > joint.freedoms().get(k).low();
      if (turns && about(k) > about(most)) {
        most = k;
      }
    }
    return about(most) > CLEARLY * size() && about(most) > size() + MUCH
        ? Optional.of(new JointMoment(joint, centre, axes, force, moment, parts, mainLoad, most))
        : Optional.empty();
  }

  private double about(int axis) {
    return Math.abs(moment.dotProduct(axes.get(axis).direction()));
  }

  @Override
  public String text() {
    return joint.fullName()
        + ": "
        + told()
        + elsewhere().map(o -> "; more about " + o.motion().axis() + ": " + o.told()).orElse("");
  }

  private String told() {
    return String.format(
        Locale.ROOT, "%.0f N·m, tends to %s it, opposed by the %s", size(), tendsTo(), opposedBy());
  }

  @Override
  public String toString() {
    return text();
  }
}
