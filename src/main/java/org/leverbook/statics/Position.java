package org.leverbook.statics;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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
import org.leverbook.support.Floor;
import org.leverbook.support.Support;

/**
 * A person held still in one pose, with loads, on the floor: the moment at every joint, and whether
 * it stands.
 *
 * <p>A value; computed whole when it is made.
 */
public final class Position implements Shown {

  private final String name;
  private final Setting setting;
  private final Placement placement;
  private final List<Force> forces;
  private final Holding holding;
  private final Balance balance;
  private final Map<String, JointMoment> moments;
  private final List<Fact> facts;
  private final List<String> notes;

  private Position(String name, Setting setting, List<Fact> facts, List<String> notes) {
    this.name = name;
    this.setting = setting;
    this.placement = setting.pose().placed();
    this.facts = List.copyOf(facts);
    this.notes = List.copyOf(notes);
    Resting resting = Resting.of(setting, placement);
    this.forces = resting.forces();
    this.holding = resting.holding();
    this.balance = resting.balance();
    this.moments = split();
  }

  /**
   * A person held still in any pose by any supports.
   *
   * @param name what to call it, as in "row, chest on the pad"
   * @param body whose
   * @param pose joint angles and place
   * @param loads what is held or pulls
   * @param supports what holds the person up or is leaned on
   * @param facts what the posture says of itself
   * @param notes what was assumed, relaxed or left out, in the coach's words
   * @return the position; where the supports cannot hold it, {@link #holding()} says why
   * @throws Refused if a support is not touched
   */
  public static Position of(
      String name,
      Body body,
      Pose pose,
      List<Load> loads,
      List<Support> supports,
      List<Fact> facts,
      List<String> notes) {
    return new Position(name, new Setting(body, pose, loads, supports, 1), facts, notes);
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
    Position position = of(name, body, pose, loads, List.of(new Floor(body)), facts, notes);
    if (!position.held()) {
      throw new Refused(position.holding.sentence());
    }
    return position;
  }

  /**
   * The same pose with more loads.
   *
   * @param more as in {@code cable(...)}
   * @return the changed position
   */
  public Position with(Load... more) {
    return changed(setting.with(more));
  }

  /**
   * The same pose without a load or a support.
   *
   * @param source as tables call it, as in "bar" or "chest pad"
   * @return the changed position
   * @throws Refused if there is nothing of that name; names what there is
   */
  public Position without(String source) {
    return changed(setting.without(source));
  }

  /**
   * The same pose on more supports.
   *
   * @param more as in {@code chestPad(deg(45))}
   * @return the changed position
   * @throws Refused if a support is not touched; says how far away it is
   */
  public Position on(Support... more) {
    return changed(setting.on(more));
  }

  private Position changed(Setting other) {
    return new Position(name, other, facts, notes);
  }

  private Map<String, JointMoment> split() {
    NetLoads net = NetLoads.of(placement, forces, Gravity.VECTOR);
    Partition partition = new Partition(placement, net, "floor", Partition.hardest(forces));
    Map<String, JointMoment> split = new LinkedHashMap<>();
    SegmentTree tree = body().tree();
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
    return setting.body();
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
    return setting.loads();
  }

  /**
   * What holds the person up or is leaned on.
   *
   * @return the supports
   */
  public List<Support> supports() {
    return setting.supports();
  }

  /**
   * Whether the supports can hold the person still, and if not, what is lacking.
   *
   * @return the verdict with its sentence
   */
  public Holding holding() {
    return holding;
  }

  /**
   * Whether the supports hold the person still.
   *
   * @return true if so
   */
  public boolean held() {
    return holding.held();
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
    text.append(": ").append(body().person().text()).append('\n');
    loads().forEach(load -> text.append(load.description()).append('\n'));
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
