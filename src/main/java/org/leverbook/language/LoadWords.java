package org.leverbook.language;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;
import org.leverbook.load.Band;
import org.leverbook.load.Barbell;
import org.leverbook.load.Cable;
import org.leverbook.load.Cam;
import org.leverbook.load.Chains;
import org.leverbook.load.DirectedForce;
import org.leverbook.load.Direction;
import org.leverbook.load.HandWeights;
import org.leverbook.load.LeverMachine;
import org.leverbook.load.NoLoad;
import org.leverbook.load.PivotingBar;
import org.leverbook.load.SteadyForce;
import org.leverbook.load.Worn;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/** The words for what is lifted; {@link Vocabulary} hands them on. */
public abstract sealed class LoadWords extends UnitWords permits SupportWords {

  /** Against gravity, as in {@code partner(newton(200), UPWARD)}. */
  public static final Direction UPWARD = Direction.UPWARD;

  /** With gravity, as in {@code partner(newton(200), DOWNWARD)}. */
  public static final Direction DOWNWARD = Direction.DOWNWARD;

  /** Where the lifter looks when standing, as in {@code partner(newton(200), FORWARD)}. */
  public static final Direction FORWARD = Direction.FORWARD;

  /** Behind the lifter, as in {@code partner(newton(200), BACKWARD)}. */
  public static final Direction BACKWARD = Direction.BACKWARD;

  /** To the lifter's own left, as in {@code partner(newton(200), LEFTWARD)}. */
  public static final Direction LEFTWARD = Direction.LEFTWARD;

  /** To the lifter's own right, as in {@code partner(newton(200), RIGHTWARD)}. */
  public static final Direction RIGHTWARD = Direction.RIGHTWARD;

  /** Farther away than this no gym reaches, metres. */
  private static final double GYM = 20;

  LoadWords() {}

  /**
   * A point of the gym in the lifter's own plane, as in {@code at(cm(90), cm(5))}.
   *
   * @param ahead of the middle of the feet; negative behind
   * @param up above the floor
   * @return the point, metres
   * @throws Refused if a length is missing or beyond 20 m
   */
  public static Vector3D at(Quantity<Length> ahead, Quantity<Length> up) {
    return at(ahead, up, cm(0));
  }

  /**
   * A point of the gym, as in {@code at(cm(90), cm(5), cm(-40))}.
   *
   * @param ahead of the middle of the feet; negative behind
   * @param up above the floor
   * @param right of the lifter's middle; negative to the left
   * @return the point, metres
   * @throws Refused if a length is missing or beyond 20 m
   */
  public static Vector3D at(Quantity<Length> ahead, Quantity<Length> up, Quantity<Length> right) {
    return new Vector3D(
        Ask.length("distance ahead", ahead, -GYM, GYM),
        Ask.length("height", up, -GYM, GYM),
        Ask.length("distance to the right", right, -GYM, GYM));
  }

  /**
   * A barbell with standard plates, as in {@code barbell(kg(140))}.
   *
   * @param mass bar and plates together, 0 to 600 kg
   * @return the barbell
   * @throws Refused if the mass is missing or outside
   */
  public static Barbell barbell(Quantity<Mass> mass) {
    return Barbell.of(mass);
  }

  /**
   * Nothing to lift, wherever a load can stand, as in {@code hinge(lifter).holding(noLoad())}.
   *
   * @return no load
   */
  public static NoLoad noLoad() {
    return new NoLoad();
  }

  /**
   * A barbell by what is put on it, as in {@code loadedBar(kg(20), kg(20), kg(10))}: 80 kg.
   *
   * @param bar the empty bar, with its collars where they are used
   * @param eachSide the discs of one end; the other end carries the same
   * @return the barbell
   * @throws Refused if a mass is missing or outside
   */
  @SafeVarargs
  public static Barbell loadedBar(Quantity<Mass> bar, Quantity<Mass>... eachSide) {
    return Barbell.loaded(bar, eachSide);
  }

  /**
   * A chain on each end of a bar in both hands, by the thickness of its steel, as in {@code
   * steelChains(cm(1.3), cm(150))}.
   *
   * @param link diameter of the link's steel, 4 to 30 mm
   * @param length of the chains
   * @return the chains
   * @throws Refused if a value is missing or outside
   */
  public static Chains steelChains(Quantity<Length> link, Quantity<Length> length) {
    return Chains.ofSteel(link, length);
  }

  /**
   * A bar with side handles that the lifter stands in, as in {@code trapBar(kg(140))}.
   *
   * @param mass bar and plates together, 0 to 600 kg
   * @return the bar
   * @throws Refused if the mass is missing or outside
   */
  public static Barbell trapBar(Quantity<Mass> mass) {
    return Barbell.trap(mass);
  }

  /**
   * Two dumbbells, as in {@code dumbbells(kg(20))}.
   *
   * @param each mass of one, 0 to 150 kg
   * @return the pair
   * @throws Refused if the mass is missing or outside
   */
  public static HandWeights dumbbells(Quantity<Mass> each) {
    return HandWeights.pair("dumbbell", each);
  }

  /**
   * One dumbbell, as in {@code dumbbell(kg(20), RIGHT)}.
   *
   * @param mass 0 to 150 kg
   * @param side {@code LEFT} or {@code RIGHT}
   * @return the dumbbell
   * @throws Refused if the mass is missing or outside, or the side is neither
   */
  public static HandWeights dumbbell(Quantity<Mass> mass, Side side) {
    return HandWeights.one("dumbbell", mass, side);
  }

  /**
   * One dumbbell in both hands, as in {@code dumbbell(kg(20))}.
   *
   * @param mass 0 to 150 kg
   * @return the dumbbell
   * @throws Refused if the mass is missing or outside
   */
  public static HandWeights dumbbell(Quantity<Mass> mass) {
    return HandWeights.inBothHands("dumbbell", mass);
  }

  /**
   * Two kettlebells, as in {@code kettlebells(kg(24))}.
   *
   * @param each mass of one, 0 to 150 kg
   * @return the pair
   * @throws Refused if the mass is missing or outside
   */
  public static HandWeights kettlebells(Quantity<Mass> each) {
    return HandWeights.pair("kettlebell", each);
  }

  /**
   * One kettlebell in both hands, as in {@code kettlebell(kg(24))}.
   *
   * @param mass 0 to 150 kg
   * @return the kettlebell
   * @throws Refused if the mass is missing or outside
   */
  public static HandWeights kettlebell(Quantity<Mass> mass) {
    return HandWeights.inBothHands("kettlebell", mass);
  }

  /**
   * One kettlebell, as in {@code kettlebell(kg(24), LEFT)}.
   *
   * @param mass 0 to 150 kg
   * @param side {@code LEFT} or {@code RIGHT}
   * @return the kettlebell
   * @throws Refused if the mass is missing or outside, or the side is neither
   */
  public static HandWeights kettlebell(Quantity<Mass> mass, Side side) {
    return HandWeights.one("kettlebell", mass, side);
  }

  /**
   * A cable in both hands, as in {@code cable(kg(50), at(cm(90), cm(5)))}.
   *
   * @param stack the mass that moves, 0 to 300 kg
   * @param pulley the last pulley
   * @return the cable, 1 : 1 without friction; {@code .through(2)} for a loop
   * @throws Refused if the mass is missing or outside
   */
  public static Cable cable(Quantity<Mass> stack, Vector3D pulley) {
    return Cable.of(stack, pulley);
  }

  /**
   * A band in both hands, as in {@code band(at(cm(0), cm(0)), cm(100), newton(150), cm(200))}: 1 m
   * long, pulling 150 N when it is 2 m long.
   *
   * @param anchor its fixed end
   * @param rest unstretched length
   * @param pull how hard it pulls at
   * @param length this length
   * @return the band
   * @throws Refused if a value is missing or outside
   */
  public static Band band(
      Vector3D anchor, Quantity<Length> rest, Quantity<Force> pull, Quantity<Length> length) {
    return Band.of(anchor, rest, pull, length);
  }

  /**
   * Chains on the ends of a bar in both hands, as in {@code chains(kg(4), cm(150))}.
   *
   * @param perMetre mass of one metre on each side
   * @param length of the chains
   * @return the chains
   * @throws Refused if a value is missing or outside
   */
  public static Chains chains(Quantity<Mass> perMetre, Quantity<Length> length) {
    return Chains.of(perMetre, length);
  }

  /**
   * A lever machine with plates, as in {@code leverMachine(at(cm(40), cm(90)), kg(40), cm(60))}.
   *
   * @param pivot its axis
   * @param plates 0 to 500 kg
   * @param arm from pivot to plates
   * @return the machine, held in both hands
   * @throws Refused if a value is missing or outside
   */
  public static LeverMachine leverMachine(
      Vector3D pivot, Quantity<Mass> plates, Quantity<Length> arm) {
    return LeverMachine.of(pivot, plates, arm);
  }

  /**
   * A lever machine with a stack over a cam, as in {@code leverMachine(at(cm(40), cm(90)), kg(40),
   * Cam.round(cm(10)))}.
   *
   * @param pivot its axis
   * @param stack 0 to 500 kg
   * @param cam radius against the angle of the handle's arm
   * @return the machine, held in both hands
   * @throws Refused if a value is missing or outside
   */
  public static LeverMachine leverMachine(Vector3D pivot, Quantity<Mass> stack, Cam cam) {
    return LeverMachine.of(pivot, stack, cam);
  }

  /**
   * A bar that turns on the floor, loaded at its far end, as in {@code pivotingBar(at(cm(150),
   * cm(0)), kg(20))}.
   *
   * @param pivot its end on the floor
   * @param plates 0 to 300 kg
   * @return the bar, in both hands
   * @throws Refused if a value is missing or outside
   */
  public static PivotingBar pivotingBar(Vector3D pivot, Quantity<Mass> plates) {
    return PivotingBar.of(pivot, plates);
  }

  /**
   * A weighted vest, as in {@code vest(kg(10))}.
   *
   * @param mass 0 to 150 kg
   * @return the vest
   * @throws Refused if the mass is missing or outside
   */
  public static Worn vest(Quantity<Mass> mass) {
    return Worn.vest(mass);
  }

  /**
   * A weight on the front of a belt, as in {@code beltWeight(kg(20))}.
   *
   * @param mass 0 to 150 kg
   * @return the weight
   * @throws Refused if the mass is missing or outside
   */
  public static Worn beltWeight(Quantity<Mass> mass) {
    return Worn.belt(mass);
  }

  /**
   * A partner who pulls both hands towards a point, as in {@code partner(newton(200), at(cm(100),
   * cm(100)))}; {@code .on(Site.CHEST)} for another place.
   *
   * @param force how hard
   * @param towards where to
   * @return the load
   * @throws Refused if a value is missing or outside
   */
  public static SteadyForce partner(Quantity<Force> force, Vector3D towards) {
    return SteadyForce.of("partner", force, towards);
  }

  /**
   * A partner who pulls both hands in a direction, as in {@code partner(newton(200), BACKWARD)} or
   * {@code partner(newton(200), FORWARD.raisedBy(deg(30)))}.
   *
   * @param force how hard
   * @param direction in which the hands are pulled
   * @return the load
   * @throws Refused if a value is missing or outside
   */
  public static DirectedForce partner(Quantity<Force> force, Direction direction) {
    return DirectedForce.of("partner", force, direction);
  }

  /**
   * A handle that does not move and answers a pull of this size, as in {@code
   * fixedHandle(newton(800), at(cm(0), cm(0)))}.
   *
   * @param force how hard it pulls back
   * @param towards where to
   * @return the load
   * @throws Refused if a value is missing or outside
   */
  public static SteadyForce fixedHandle(Quantity<Force> force, Vector3D towards) {
    return SteadyForce.of("fixed handle", force, towards);
  }

  /**
   * A handle that does not move and answers a pull of this size, as in {@code
   * fixedHandle(newton(800), DOWNWARD)}.
   *
   * @param force how hard it pulls back
   * @param direction in which it pulls the hands
   * @return the load
   * @throws Refused if a value is missing or outside
   */
  public static DirectedForce fixedHandle(Quantity<Force> force, Direction direction) {
    return DirectedForce.of("fixed handle", force, direction);
  }
}
