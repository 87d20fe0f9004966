package org.leverbook.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.hipparchus.geometry.euclidean.twod.hull.MonotoneChain;
import org.leverbook.display.Shown;
import org.leverbook.support.Contact;

/**
 * Whether the position stands, and with how much to spare.
 *
 * @param centreOfPressure where the floor's push must act, in the world, metres, at height zero
 * @param polygon the corners of the area that the contacts span, (x, z) in metres,
 *     counter-clockwise
 * @param margin distance from the centre of pressure to the nearest edge, metres; negative outside
 * @param shareOfFoot where the centre of pressure lies along the feet: 0 at the back of the heel, 1
 *     at the toe tip
 * @param held whether pushing contacts alone can hold the body
 * @param feet whether feet alone stand there; otherwise the share is that of all that carries, from
 *     its rear end to its front end
 */
public record Balance(
    Vector3D centreOfPressure,
    List<Vector2D> polygon,
    double margin,
    double shareOfFoot,
    boolean held,
    boolean feet)
    implements Shown {

  /** Keeps its own copy of the list. */
  public Balance {
    polygon = List.copyOf(polygon);
  }

  /**
   * The balance on a level floor.
   *
   * @param contacts where it can push
   * @param centreOfPressure where it must, in the world, metres
   * @param heel forward place of the back of the heels, metres
   * @param toe forward place of the toe tips, metres
   * @param feet whether feet alone stand there
   * @return the balance
   */
  static Balance of(
      List<Contact> contacts, Vector3D centreOfPressure, double heel, double toe, boolean feet) {
    List<Vector2D> points = new ArrayList<>();
    contacts.forEach(c -> points.add(new Vector2D(c.point().getX(), c.point().getZ())));
    List<Vector2D> polygon = List.of(new MonotoneChain().generate(points).getVertices());
    Vector2D pressure = new Vector2D(centreOfPressure.getX(), centreOfPressure.getZ());
    double margin = margin(polygon, pressure);
    double share = (centreOfPressure.getX() - heel) / (toe - heel);
    return new Balance(centreOfPressure, polygon, margin, share, margin >= 0, feet);
  }

  private static double margin(List<Vector2D> polygon, Vector2D point) {
    boolean inside = true;
    for (int i = 0; i < polygon.size(); i++) {
      Vector2D edge = edge(polygon, i);
      Vector2D to = point.subtract(polygon.get(i));
      inside &= edge.getX() * to.getY() - edge.getY() * to.getX() >= 0;
    }
    double distance = point.distance(nearest(polygon, point));
    return inside ? distance : -distance;
  }

  /**
   * The point of the polygon's edge that the centre of pressure is nearest to, (x, z) in metres.
   */
  Vector2D nearestEdge() {
    return nearest(polygon, new Vector2D(centreOfPressure.getX(), centreOfPressure.getZ()));
  }

  private static Vector2D nearest(List<Vector2D> polygon, Vector2D point) {
    Vector2D best = polygon.get(0);
    for (int i = 0; i < polygon.size(); i++) {
      Vector2D from = polygon.get(i);
      Vector2D edge = edge(polygon, i);
      double share = point.subtract(from).dotProduct(edge) / edge.getNormSq();
      Vector2D here = from.add(edge.scalarMultiply(Math.max(0, Math.min(1, share))));
      best = here.distance(point) < best.distance(point) ? here : best;
    }
    return best;
  }

  private static Vector2D edge(List<Vector2D> polygon, int corner) {
    return polygon.get((corner + 1) % polygon.size()).subtract(polygon.get(corner));
  }

  @Override
  public String text() {
    return String.format(
        Locale.ROOT,
        "balance at %.0f %% of %s, %.1f cm %s the edge of support",
        100 * shareOfFoot,
        feet ? "the foot from the heel" : "what carries, from behind",
        100 * Math.abs(margin),
        held ? "inside" : "outside");
  }

  @Override
  public String toString() {
    return text();
  }
}
