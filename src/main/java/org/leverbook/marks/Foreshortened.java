package org.leverbook.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Side;
import org.leverbook.pose.Camera;
import org.leverbook.pose.Placement;

/**
 * How much shorter a part of the body looks than it is, and so how far it is turned out of the
 * picture.
 *
 * @param name as in "right thigh"
 * @param seen its length in the picture by the scale, metres
 * @param length its true length, metres
 * @param tilt how far out of the picture it is turned by its marks alone, acos(seen / true),
 *     radians; zero where it looks longer than it is
 * @param nearer which of its ends the fitted body has nearer to the camera
 * @param depth how much nearer to the camera the fitted body has its lower end, metres
 */
public record Foreshortened(
    String name, double seen, double length, double tilt, String nearer, double depth) {

  static List<Foreshortened> of(List<Mark> marks, Body body, Camera camera, Placement where) {
    List<Foreshortened> all = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      for (Stretch stretch : Stretch.values()) {
        Optional<Mark> from = of(marks, stretch.from, side);
        Optional<Mark> to = of(marks, stretch.to, side);
        if (from.isPresent() && to.isPresent()) {
          all.add(of(stretch, from.get(), to.get(), body, camera, where));
        }
      }
    }
    return all;
  }

  private static Optional<Mark> of(List<Mark> marks, Landmark landmark, Side side) {
    return marks.stream().filter(m -> m.landmark() == landmark && m.side() == side).findFirst();
  }

  private static Foreshortened of(
      Stretch stretch, Mark from, Mark to, Body body, Camera camera, Placement where) {
    Vector3D start = where.centre(from.side().of(stretch.from.word()));
    Vector3D end = where.centre(to.side().of(stretch.to.word()));
    // Each end by its own distance from the camera, as fitted.
    Vector3D across = camera.place(to.pixel(), end).subtract(camera.place(from.pixel(), start));
    Vector3D viewer = camera.frame().z();
    double seen = across.subtract(viewer.scalarMultiply(across.dotProduct(viewer))).getNorm();
    double length = stretch.length(body.links());
    double towards = end.subtract(start).dotProduct(viewer);
    return new Foreshortened(
        from.side().of(stretch.word()),
        seen,
        length,
        Math.acos(Math.min(1, seen / length)),
        towards > 0 ? stretch.to.word() : stretch.from.word(),
        towards);
  }

  @Override
  public String toString() {
    return seen > length
        ? String.format(
            Locale.ROOT, "%s looks %.1f cm long and is %.1f cm", name, 100 * seen, 100 * length)
        : String.format(
            Locale.ROOT,
            "%s looks %.1f cm long and is %.1f cm: turned %.0f° out of the picture, the %s nearer",
            name,
            100 * seen,
            100 * length,
            Math.toDegrees(tilt),
            nearer);
  }
}
