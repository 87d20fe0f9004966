package org.leverbook.solve;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;

/** What is wished of one pose: met as well as the conditions let it be. */
public abstract sealed class Wishes permits Bounds {

  /** Marks a wish that is made for a pose between start and finish. */
  static final String ON_THE_WAY = "on the way";

  static final String BALANCE = "the balance";

  final Body body;
  final Coordinates coordinates;
  final List<Statement> said = new ArrayList<>();
  private final List<Balance> balances = new ArrayList<>();

  /** A wish for balance and what it was made of, so that it can be made again with more pulls. */
  private record Balance(Statement wish, double forward, List<Features.Carried> masses) {

    Balance with(Body body, List<Features.Pulled> pulls) {
      Row row = Features.balance(body, Vector3D.PLUS_I, forward, masses, pulls);
      Statement again =
          new Statement(wish.what(), wish.where(), false, wish.weight(), -1, List.of(row));
      return new Balance(again, forward, masses);
    }
  }

  Wishes(Body body, Coordinates coordinates) {
    this.body = body;
    this.coordinates = coordinates;
  }

  /**
   * The same as a wish.
   *
   * @param where as in "the middle of the foot"
   * @param forward place of that point, metres
   * @param masses kilograms and the points that carry them, besides the body's own
   * @param weight how much a metre off it matters beside a radian off a usual angle
   */
  public void ratherBalanced(
      String where, double forward, List<Features.Carried> masses, double weight) {
    Row row = Features.balance(body, Vector3D.PLUS_I, forward, masses, List.of());
    Statement wish = new Statement(BALANCE, where, false, weight, -1, List.of(row));
    said.add(wish);
    balances.add(new Balance(wish, forward, masses));
  }

  /**
   * Other forces count for every wished balance as well, in place of those told before.
   *
   * @param pulls the forces and the places of the body that they act on
   */
  public void wishedBalancesCount(List<Features.Pulled> pulls) {
    balances.removeIf(balance -> said.stream().noneMatch(wish -> wish == balance.wish));
    balances.replaceAll(
        balance -> {
          Balance again = balance.with(body, pulls);
          said.replaceAll(wish -> wish == balance.wish ? again.wish : wish);
          return again;
        });
  }

  /**
   * Whether any balance is asked or wished, so that it matters what else pulls.
   *
   * @return whether
   */
  public boolean mindsBalance() {
    return said.stream().anyMatch(s -> s.what().equals(BALANCE));
  }

  /**
   * A wish: a feature along a direction comes near a value.
   *
   * @param feature point or direction
   * @param direction unit vector
   * @param value metres, or a cosine
   * @param weight how much a metre off it matters beside a radian off a usual angle
   */
  public void rather(Feature feature, Vector3D direction, double value, double weight) {
    wish(weight, new Row().plus(feature, direction).equals(value));
  }

  /**
   * A wish: two points of the body come together along a direction.
   *
   * @param one which
   * @param other which
   * @param direction unit vector
   * @param weight how much a metre off it matters beside a radian off a usual angle
   */
  public void ratherTogether(Feature one, Feature other, Vector3D direction, double weight) {
    wish(weight, new Row().plus(one, direction).minus(other, direction));
  }

  /**
   * A wish: a coordinate follows others in proportion, and a product of two directions.
   *
   * @param weight how much a radian off it matters beside a radian off a usual angle
   * @param constant added to the rest
   * @param one direction, with {@code other} and its factor
   * @param other direction
   * @param factor times their product
   * @param name the coordinate that follows
   */
  public void follows(
      double weight, double constant, Feature one, Feature other, double factor, String name) {
    Row row = new Row().coordinate(coordinates.indexOf(name), 1).equals(constant);
    wish(weight, row.product(one, other, -factor));
  }

  /**
   * A wish: two coordinates keep a proportion.
   *
   * @param weight how much a radian off it matters beside a radian off a usual angle
   * @param one the first
   * @param factor of the first
   * @param other the second, which comes near factor times the first
   */
  public void proportion(double weight, String one, double factor, String other) {
    wish(
        weight,
        new Row()
            .coordinate(coordinates.indexOf(other), 1)
            .coordinate(coordinates.indexOf(one), -factor));
  }

  /**
   * A wish: two directions of the body, or ways between its points, have a scalar product.
   *
   * @param one feature
   * @param other feature
   * @param product their scalar product
   * @param weight how much a unit off it matters beside a radian off a usual angle
   */
  public void ratherProduct(Feature one, Feature other, double product, double weight) {
    wish(weight, new Row().product(one, other, 1).equals(product));
  }

  /**
   * A wish that holds between start and finish as well: a feature along a direction comes near a
   * value.
   *
   * @param feature point or direction
   * @param direction unit vector
   * @param value metres, or a cosine
   * @param weight how much a metre off it matters beside a radian off a usual angle
   */
  public void ratherOnTheWay(Feature feature, Vector3D direction, double value, double weight) {
    Row row = new Row().plus(feature, direction).equals(value);
    said.add(new Statement("a wish", ON_THE_WAY, true, weight, -1, List.of(row)));
  }

  /**
   * A wish that holds between start and finish as well: the weight balances over a place forward.
   *
   * @param forward of that place, metres
   * @param masses kilograms and the points that carry them, besides the body's own
   * @param weight how much a metre off it matters beside a radian off a usual angle
   */
  public void ratherBalancedOnTheWay(double forward, List<Features.Carried> masses, double weight) {
    ratherBalanced(ON_THE_WAY, forward, masses, weight);
  }

  private void wish(double weight, Row row) {
    said.add(new Statement("a wish", "", true, weight, -1, List.of(row)));
  }
}
