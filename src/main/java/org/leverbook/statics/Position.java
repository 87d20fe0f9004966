package org.leverbook.statics;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.load.Force;
import org.leverbook.load.Load;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.support.Support;

/**
 * A person held still in one pose, with loads, on the floor: the moment at every joint, and whether
 * it stands.
 *
 * <p>A value. What it pulls at and touches is checked when it is made; the sums are done once, when
 * they are first asked for.
 */
public final class Position implements Shown, MuscleQuestions, StrengthQuestions, ViewQuestions {

  private final String name;
  final Setting setting;
  private final Placement placement;
  final Sums sums;
  private final List<Fact> facts;
  final Notes notes;

  Position(String name, Setting setting, List<Fact> facts, Notes notes) {
    this.name = Ask.present("name of the position", name, "\"hinge, start\"");
    this.setting = setting;
    this.placement = setting.pose().placed();
    this.sums = new Sums(setting, placement);
    this.facts = List.copyOf(facts);
    this.notes = Ask.present("notes on the position", notes, "Notes.ofPosture(List.of())");
  }

  private Position(String name, Position same, Setting setting, Notes notes) {
    this.name = name;
    this.setting = setting;
    this.placement = same.placement;
    this.sums = same.sums;
    this.facts = same.facts;
    this.notes = notes;
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
    return of(name, body, pose, loads, supports, facts, Notes.ofPosture(notes));
  }

  /**
   * The same, where some notes are true with these loads and supports only.
   *
   * @return the position
   */
  public static Position of(
      String name,
      Body body,
      Pose pose,
      List<Load> loads,
      List<Support> supports,
      List<Fact> facts,
      Notes notes) {
    return new Position(
        name, new Setting(body, pose, loads, supports, 1, 4, View.SIDE), facts, notes);
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

  /** The same under another name. */
  Position called(String other, Notes itsNotes) {
    return new Position(other, this, setting, itsNotes);
  }

  Position changed(Setting other) {
    return new Position(name, other, facts, notes.afterChange());
  }

  /**
   * The moment at a joint: of a paired joint, the side where it is greater (the right where both
   * are equal).
   *
   * @param joint which
   * @return what the resistance asks of it
   */
  public JointMoment moment(JointId joint) {
    return sums.moments().greater(joint);
  }

  /**
   * The moment at a joint of one side.
   *
   * @param joint which
   * @param side left or right; ignored for a joint of the midline
   * @return what the resistance asks of it
   * @throws Refused if the supports cannot hold and would reach through this joint
   */
  public JointMoment moment(JointId joint, Side side) {
    return sums.moments().at(joint, side);
  }

  /**
   * Whether the moment at a joint is known: always where the position is held, and otherwise where
   * no support reaches through the joint.
   *
   * @param joint which
   * @param side left or right; ignored for a joint of the midline
   * @return true if so
   */
  public boolean knows(JointId joint, Side side) {
    return sums.moments().knows(joint, side);
  }

  /**
   * The net force through a joint before muscles.
   *
   * @param joint which
   * @param side left or right; ignored for a joint of the midline
   * @return compression and shear in the bone's frame
   */
  public ContactForce contactForce(JointId joint, Side side) {
    return ContactForce.of(moment(joint, side), placement);
  }

  /**
   * The net forces through the joints and discs, before muscles.
   *
   * @return compression and shear, every joint
   */
  public Sheet contactForces() {
    return SupportSheets.contactForces(this).about(this);
  }

  /**
   * What each support gives: force, pressure point, share of its friction.
   *
   * @return a row for each support and part of the body
   */
  public Sheet reactions() {
    return SupportSheets.reactions(this).about(this);
  }

  /**
   * What each support gives each part of the body.
   *
   * @return the reactions; empty where the position is not held
   */
  public List<Reaction> supportForces() {
    return sums.reactions();
  }

  /** What loads give whose push the body shares out: a sled. */
  List<Reaction> pressed() {
    return sums.pressed();
  }

  /**
   * The same position with the pads used less: a share of the way from leaving them untouched (as
   * far as the lifter can be held without) to relaxing onto them.
   *
   * @param share 0 to 100 %
   * @return the changed position
   * @throws Refused if the share is missing or outside
   */
  public Position leaning(Quantity<Dimensionless> share) {
    return leaning(Ask.share("leaning", share, 0, 1));
  }

  Position changedView(Setting other) {
    return new Position(name, this, other, notes);
  }

  private Position leaning(double share) {
    return new Position(name, setting.leaning(share), facts, notes.withoutThoseOfLoads());
  }

  /** The same position with eight edges instead of four for each contact's cone of friction. */
  public Position finerFriction() {
    return new Position(name, setting.finer(), facts, notes);
  }

  /**
   * Both ends of leaning side by side: pads untouched, and relaxed onto them.
   *
   * @return a row for each joint, and what each pad gives
   */
  public Sheet bothEnds() {
    return SupportSheets.bothEnds(leaning(0), leaning(1)).about(this);
  }

  /**
   * All joints, in the order of the tree.
   *
   * @return one for each joint and side
   */
  public List<JointMoment> all() {
    return sums.moments().all();
  }

  /**
   * The moments as a table: arm, size, what the resistance tends to do, what opposes it, and where
   * it comes from.
   *
   * @return every joint, legs first, then the spine from below, then the arms
   */
  public Sheet moments() {
    return MomentSheets.all(this).about(this);
  }

  /**
   * Arm and moment at every level of the spine.
   *
   * @return L5/S1 to C7/T1, from below
   */
  public Sheet spine() {
    return MomentSheets.spine(this).about(this);
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
   * @return the picture from the side, or from the front where the lift's work is to be seen there
   */
  public Picture picture() {
    return Illustrator.pictureOf(this, List.of());
  }

  /** What to call it, as in "hinge, start". */
  public String name() {
    return name;
  }

  /** Whose it is. */
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

  /** What is held, pulls or resists being moved. */
  public List<Load> loads() {
    return setting.loads();
  }

  /** What holds the person up or is leaned on. */
  public List<Support> supports() {
    return setting.supports();
  }

  /**
   * Whether the supports can hold the person still, and if not, what is lacking.
   *
   * @return the verdict with its sentence
   */
  public Holding holding() {
    return sums.resting().holding();
  }

  /** Whether the supports hold the person still. */
  public boolean held() {
    return holding().held();
  }

  /**
   * Every force on the body except the weights of its segments.
   *
   * @return loads first, then supports
   */
  public List<Force> forces() {
    return sums.resting().forces();
  }

  /**
   * Whether it stands, and with how much to spare.
   *
   * @return the balance
   * @throws Refused if nothing stands on level ground here
   */
  public Balance balance() {
    return onGround().orElseThrow(() -> new Refused(PositionText.withoutBalance(this)));
  }

  /** The balance, where something stands on level ground. */
  public Optional<Balance> onGround() {
    return sums.resting().balance();
  }

  /** How the posture came out: facts in the order they matter. */
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
    return Fact.named(facts, factName);
  }

  /**
   * What was assumed, relaxed or left out.
   *
   * @return sentences in the coach's words
   */
  public List<String> notes() {
    return PositionText.withLoads(notes.all(), loads());
  }

  @Override
  public String text() {
    return PositionText.of(this);
  }

  @Override
  public String toString() {
    return text();
  }
}
