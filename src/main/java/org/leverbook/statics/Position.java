package org.leverbook.statics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.Load;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.support.Contact;
import org.leverbook.support.Floor;

/**
 * A person held still in one pose, with loads, on the floor: the moment at every joint, and whether
 * it stands.
 *
 * <p>A value; computed whole when it is made.
 */
public final class Position implements Shown {

  private final String name;
  private final Body body;
  private final Placement placement;
  private final List<Load> loads;
  private final List<Force> forces;
  private final Balance balance;
  private final Map<String, JointMoment> moments;
  private final List<Fact> facts;
  private final List<String> notes;

  private Position(
      String name,
      Body body,
      Placement placement,
      List<Load> loads,
      List<Force> forces,
      Balance balance,
      List<Fact> facts,
      List<String> notes) {
    this.name = name;
    this.body = body;
    this.placement = placement;
    this.loads = List.copyOf(loads);
    this.forces = List.copyOf(forces);
    this.balance = balance;
    this.facts = List.copyOf(facts);
    this.notes = List.copyOf(notes);
    this.moments = split();
  }

  /**
   * A person standing still on the floor with loads.
   *
   * @param name what to call it, as in "hinge, start"
   * @param body whose
   * @param pose joint angles and place; the feet flat on the floor
   * @param loads what is held
   * @param facts what the posture says of itself
   * @param notes what was assumed, relaxed or left out, in the coach's words
   * @return the position
   * @throws Refused if it would tip over; says which way and by how much
   */
  public static Position standing(
      String name, Body body, Pose pose, List<Load> loads, List<Fact> facts, List<String> notes) {
    Placement where = pose.placed();
    List<Force> forces = new ArrayList<>();
    loads.forEach(load -> forces.addAll(load.forces(where)));
    NetLoads known = NetLoads.of(where, forces, Gravity.VECTOR);
    Vector3D force = known.force(0);
    Vector3D moment = Vector3D.ZERO;
    for (String source : known.sources()) {
      moment = moment.add(known.moment(source, 0, Vector3D.ZERO));
    }
    Floor floor = new Floor(body);
    List<Contact> contacts = floor.contacts(where);
    Vector3D pressure =
        new Vector3D(moment.getZ() / force.getY(), 0, -moment.getX() / force.getY());
    double[] foot = footSpan(body, where);
    Balance balance = Balance.of(contacts, pressure, foot[0], foot[1]);
    if (!balance.held()) {
      throw new Refused(tips(balance, contacts));
    }
    forces.addAll(Reactions.levelFloor(floor.source(), contacts, force, moment));
    return new Position(name, body, where, loads, forces, balance, facts, notes);
  }

  /** Back of the heels and toe tips, forward places averaged over both feet. */
  private static double[] footSpan(Body body, Placement where) {
    double heel = 0;
    double toe = 0;
    double length = body.links().footLength();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Body.SolePoint tip =
          body.soles().stream()
              .filter(p -> p.name().equals(side.of("toe tip")))
              .findFirst()
              .orElseThrow();
      Vector3D point = where.toWorld(tip.segment(), tip.place());
      toe += point.getX() / 2;
      Vector3D forward = where.frame(where.tree().indexOf(side.of("foot"))).x();
      heel += (point.getX() - length * forward.getX()) / 2;
    }
    return new double[] {heel, toe};
  }

  private static String tips(Balance balance, List<Contact> contacts) {
    double x = balance.centreOfPressure().getX();
    double front = contacts.stream().mapToDouble(c -> c.point().getX()).max().orElseThrow();
    double back = contacts.stream().mapToDouble(c -> c.point().getX()).min().orElseThrow();
    if (x > front) {
      return String.format(
          Locale.ROOT,
          "Tips forward: the weight of lifter and load together falls %.1f cm ahead of the toes. Bring the load"
              + " or the hips back.",
          100 * (x - front));
    }
    if (x < back) {
      return String.format(
          Locale.ROOT,
          "Tips backward: the weight of lifter and load together falls %.1f cm behind the heels' support. Bring the"
              + " load or the shoulders forward.",
          100 * (back - x));
    }
    return String.format(
        Locale.ROOT,
        "Tips sideways: the weight of lifter and load together falls %.1f cm outside the feet. Widen the stance or"
            + " centre the load.",
        100 * -balance.margin());
  }

  private Map<String, JointMoment> split() {
    NetLoads net = NetLoads.of(placement, forces, Gravity.VECTOR);
    Partition partition = new Partition(placement, net, "floor", Partition.hardest(forces));
    Map<String, JointMoment> split = new LinkedHashMap<>();
    SegmentTree tree = body.tree();
    for (int i = 1; i < tree.size(); i++) {
      split.put(tree.segment(i).joint().fullName(), partition.at(i));
    }
    return split;
  }

  /**
   * The moment at a joint: of a paired joint, the side where it is greater (the right where both
   * are equal).
   *
   * @param joint which
   * @return what the resistance asks of it
   */
  public JointMoment moment(JointId joint) {
    JointMoment right = moment(joint, Side.RIGHT);
    if (!joint.paired()) {
      return right;
    }
    JointMoment left = moment(joint, Side.LEFT);
    return left.size() > right.size() * (1 + 1e-9) ? left : right;
  }

  /**
   * The moment at a joint of one side.
   *
   * @param joint which
   * @param side left or right; ignored for a joint of the midline
   * @return what the resistance asks of it
   */
  public JointMoment moment(JointId joint, Side side) {
    return moments.get(joint.on(side));
  }

  /**
   * All joints, in the order of the tree.
   *
   * @return one for each joint and side
   */
  public List<JointMoment> all() {
    return List.copyOf(moments.values());
  }

  /**
   * The moments as a table: arm, size, what the resistance tends to do, what opposes it, and where
   * it comes from.
   *
   * @return every joint, legs first, then the spine from below, then the arms
   */
  public Sheet moments() {
    return MomentSheets.all(this);
  }

  /**
   * Arm and moment at every level of the spine.
   *
   * @return L5/S1 to C7/T1, from below
   */
  public Sheet spine() {
    return MomentSheets.spine(this);
  }

  /**
   * Everything needed to do the sums again elsewhere.
   *
   * @return the worksheet, which saves itself as JSON
   */
  public Worksheet worksheet() {
    return new Worksheet(this);
  }

  /**
   * The body, the load, its line of force and the arms to it, to scale.
   *
   * @return the picture from the lifter's right side
   */
  public Picture picture() {
    return Illustrator.pictureOf(this, List.of());
  }

  /**
   * What to call it.
   *
   * @return as in "hinge, start"
   */
  public String name() {
    return name;
  }

  /**
   * Whose it is.
   *
   * @return the body
   */
  public Body body() {
    return body;
  }

  /**
   * Where every segment is.
   *
   * @return frames and joint centres in the world
   */
  public Placement placement() {
    return placement;
  }

  /**
   * What is held.
   *
   * @return the loads
   */
  public List<Load> loads() {
    return loads;
  }

  /**
   * Every force on the body except the weights of its segments.
   *
   * @return loads first, then supports
   */
  public List<Force> forces() {
    return forces;
  }

  /**
   * Whether it stands, and with how much to spare.
   *
   * @return the balance
   */
  public Balance balance() {
    return balance;
  }

  /**
   * How the posture came out.
   *
   * @return facts in the order they matter
   */
  public List<Fact> facts() {
    return facts;
  }

  /**
   * One fact.
   *
   * @param factName as in "hip height"
   * @return its value in its unit
   * @throws Refused if there is none of that name; names those that exist
   */
  public double fact(String factName) {
    return facts.stream()
        .filter(f -> f.name().equals(factName))
        .mapToDouble(Fact::value)
        .findFirst()
        .orElseThrow(
            () ->
                new Refused(
                    "This position has no \""
                        + factName
                        + "\"; it has "
                        + facts.stream().map(Fact::name).collect(Collectors.joining(", "))
                        + "."));
  }

  /**
   * What was assumed, relaxed or left out.
   *
   * @return sentences in the coach's words
   */
  public List<String> notes() {
    return notes;
  }

  @Override
  public String text() {
    StringBuilder text = new StringBuilder(name);
    text.append(": ").append(body.person().text()).append('\n');
    loads.forEach(load -> text.append(load.description()).append('\n'));
    text.append(facts.stream().map(Fact::toString).collect(Collectors.joining(", ")));
    text.append('\n').append(balance.text()).append('\n');
    for (JointId joint : List.of(JointId.HIP, JointId.KNEE, JointId.L5_S1, JointId.SHOULDER)) {
      text.append(moment(joint).text()).append('\n');
    }
    notes.forEach(note -> text.append(note).append('\n'));
    return text.append(Caution.TEXT).toString();
  }

  @Override
  public String toString() {
    return text();
  }
}
