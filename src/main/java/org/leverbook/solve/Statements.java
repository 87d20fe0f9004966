package org.leverbook.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.SegmentTree;
import org.leverbook.pose.Frame;
import org.leverbook.quantity.Refused;

/**
 * What is said of one pose: conditions that must be met, wishes with a weight, and for each
 * coordinate its range, its usual value and how strongly it keeps to it.
 *
 * <p>Lengths in metres, angles in radians, directions of the world: x forward, y up, z to the
 * person's right. Collected once, then given to a {@link PoseSolver}.
 */
public final class Statements extends Bounds {

  private final Frame attitude;
  private final List<Double> slacks = new ArrayList<>();

  /**
   * Nothing said yet.
   *
   * @param body whose pose
   * @param coordinates what it is made of
   * @param attitude the frame of the pelvis that leaning and turning are counted from: upright,
   *     lying on the back
   */
  public Statements(Body body, Coordinates coordinates, Frame attitude) {
    super(body, coordinates);
    this.attitude = attitude;
  }

  /**
   * Whose pose.
   *
   * @return the body
   */
  public Body body() {
    return body;
  }

  /**
   * What the pose is made of.
   *
   * @return the coordinates
   */
  public Coordinates coordinates() {
    return coordinates;
  }

  Frame attitude() {
    return attitude;
  }

  List<Statement> said() {
    return said;
  }

  int slacks() {
    return slacks.size();
  }

  /**
   * A coordinate keeps to a value as well as it can.
   *
   * @param name as in "knee flexion"
   * @param value radians or metres
   * @param strength how strongly: 1 for a joint that gives way last, 0.1 for one that gives way
   *     first
   * @return this
   */
  public Statements usually(String name, double value, double strength) {
    int i = coordinates.indexOf(name);
    usual[i] = Math.max(low[i], Math.min(high[i], value));
    stiffness[i] = strength;
    return this;
  }

  /**
   * A coordinate has a value.
   *
   * @param name as in "knee flexion"
   * @param value radians or metres
   * @return this
   * @throws Refused if its range does not reach so far
   */
  public Statements exactly(String name, double value) {
    int i = coordinates.indexOf(name);
    if (!(value >= low[i] - 1e-9 && value <= high[i] + 1e-9)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A %s of %.0f° was asked for, but it goes from %.0f to %.0f°.",
              name,
              Math.toDegrees(value),
              Math.toDegrees(low[i]),
              Math.toDegrees(high[i])));
    }
    low[i] = value;
    high[i] = value;
    usual[i] = value;
    return this;
  }

  /**
   * A coordinate stays within less than its joint's range.
   *
   * @param name as in "knee flexion"
   * @param least radians or metres
   * @param most radians or metres
   * @return this
   */
  public Statements within(String name, double least, double most) {
    int i = coordinates.indexOf(name);
    low[i] = Math.max(low[i], least);
    high[i] = Math.max(low[i], Math.min(high[i], most));
    usual[i] = Math.max(low[i], Math.min(high[i], usual[i]));
    return this;
  }

  /**
   * A point is at a place.
   *
   * @param what as in "the right hand"
   * @param where as in "the bar"
   * @param point which
   * @param place in the world
   * @return this
   */
  public Statements at(String what, String where, Feature point, Vector3D place) {
    return along(
        what, where, point, place, List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K));
  }

  /**
   * A point is at a place as far as some directions go: one for a height, two for a line.
   *
   * @param what as in "the right hand"
   * @param where as in "the bar"
   * @param point which
   * @param place in the world
   * @param directions unit vectors
   * @return this
   */
  public Statements along(
      String what, String where, Feature point, Vector3D place, List<Vector3D> directions) {
    List<Row> rows = new ArrayList<>();
    for (Vector3D d : directions) {
      rows.add(new Row().plus(point, d).equals(place.dotProduct(d)));
    }
    return hard(what, where, false, rows);
  }

  /**
   * Two points of the body are where each other is, as far as some directions go.
   *
   * @param what as in "the right hand"
   * @param where as in "the bar on the back"
   * @param one which
   * @param other which
   * @param apart how far the first is from the second, as a vector of the world
   * @param directions unit vectors
   * @return this
   */
  public Statements together(
      String what,
      String where,
      Feature one,
      Feature other,
      Vector3D apart,
      List<Vector3D> directions) {
    List<Row> rows = new ArrayList<>();
    for (Vector3D d : directions) {
      rows.add(new Row().plus(one, d).minus(other, d).equals(apart.dotProduct(d)));
    }
    return hard(what, where, false, rows);
  }

  /**
   * A point is between two others of the body, as far as some directions go.
   *
   * @param what as in "the bar"
   * @param where as in "the chest"
   * @param point which
   * @param from one of the others
   * @param to the other of the others
   * @param share of the way from the one to the other, 0 to 1
   * @param apart how far the point is from there, as a vector of the world
   * @param directions unit vectors
   * @return this
   */
  public Statements between(
      String what,
      String where,
      Feature point,
      Feature from,
      Feature to,
      double share,
      Vector3D apart,
      List<Vector3D> directions) {
    List<Row> rows = new ArrayList<>();
    for (Vector3D d : directions) {
      rows.add(
          new Row()
              .plus(point, d)
              .minus(from, d.scalarMultiply(1 - share))
              .minus(to, d.scalarMultiply(share))
              .equals(apart.dotProduct(d)));
    }
    return hard(what, where, false, rows);
  }

  /**
   * A point lies at least so far along a direction.
   *
   * @param what as in "the right knee"
   * @param where as in "the floor"
   * @param point which
   * @param direction unit vector
   * @param least metres
   * @return this
   */
  public Statements atLeast(
      String what, String where, Feature point, Vector3D direction, double least) {
    slacks.add(0.0);
    Row row = new Row().plus(point, direction).equals(least);
    said.add(new Statement(what, where, false, 0, slacks.size() - 1, List.of(row)));
    return this;
  }

  /**
   * A point lies at least so far along a direction beyond another.
   *
   * @param what as in "the right knee"
   * @param where as in "the right hip"
   * @param one which
   * @param other which
   * @param direction unit vector
   * @param least metres
   * @return this
   */
  public Statements beyond(
      String what, String where, Feature one, Feature other, Vector3D direction, double least) {
    slacks.add(0.0);
    Row row = new Row().plus(one, direction).minus(other, direction).equals(least);
    said.add(new Statement(what, where, false, 0, slacks.size() - 1, List.of(row)));
    return this;
  }

  /**
   * A direction of the body points a way of the world.
   *
   * @param what as in "the right foot"
   * @param where as in "its direction"
   * @param direction of unit length
   * @param way unit vector
   * @return this
   */
  public Statements points(String what, String where, Feature direction, Vector3D way) {
    List<Row> rows = new ArrayList<>();
    for (Vector3D d : List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K)) {
      rows.add(new Row().plus(direction, d).equals(way.dotProduct(d)));
    }
    return hard(what, where, true, rows);
  }

  /**
   * A direction of the body has a given part along a way of the world: zero where it is square to
   * it.
   *
   * @param what as in "the right hand"
   * @param where as in "the bar"
   * @param direction of unit length
   * @param way unit vector
   * @param cosine of the angle between them
   * @return this
   */
  public Statements leans(
      String what, String where, Feature direction, Vector3D way, double cosine) {
    return hard(what, where, true, List.of(new Row().plus(direction, way).equals(cosine)));
  }

  /**
   * The line between two points leans forward from the vertical, seen from the side.
   *
   * @param what as in "the trunk"
   * @param from its lower end
   * @param to its upper end
   * @param lean radians, top forward
   * @return this
   */
  public Statements inclined(String what, Feature from, Feature to, double lean) {
    Vector3D across = new Vector3D(Math.cos(lean), -Math.sin(lean), 0);
    return hard(
        what, "its inclination", false, List.of(new Row().plus(to, across).minus(from, across)));
  }

  /**
   * Two directions of the body stand at an angle to each other, or two ways between points have a
   * scalar product.
   *
   * @param what as in "the right forearm"
   * @param where as in "square to the cable"
   * @param one feature
   * @param other feature
   * @param product their scalar product
   * @return this
   */
  public Statements product(String what, String where, Feature one, Feature other, double product) {
    return hard(what, where, true, List.of(new Row().product(one, other, 1).equals(product)));
  }

  /**
   * Coordinates add up to a value.
   *
   * @param what as in "the spine's bend"
   * @param sum radians
   * @param names which
   * @return this
   */
  public Statements sum(String what, double sum, String... names) {
    Row row = new Row().equals(sum);
    for (String name : names) {
      row.coordinate(coordinates.indexOf(name), 1);
    }
    return hard(what, "what was asked for", true, List.of(row));
  }

  /**
   * Weight and pulls balance over a point of the ground, along a level direction. Said again of the
   * same direction, it takes the place of what was said before.
   *
   * @param along forward or to the right
   * @param place of that point along it, metres
   * @param masses kilograms and the points that carry them, besides the body's own
   * @param pulls other forces and the places of the body that they act on
   * @return this
   */
  public Statements balanced(
      Vector3D along, double place, List<Features.Carried> masses, List<Features.Pulled> pulls) {
    String where = along.getX() == 0 ? "over the foot, sideways" : "over the foot";
    said.removeIf(s -> s.what().equals(BALANCE) && s.where().equals(where) && s.mustHold());
    return hard(
        BALANCE, where, false, List.of(Features.balance(body, along, place, masses, pulls)));
  }

  private Statements hard(String what, String where, boolean turning, List<Row> rows) {
    said.add(new Statement(what, where, turning, 0, -1, List.copyOf(rows)));
    return this;
  }

  SegmentTree tree() {
    return body.tree();
  }
}
