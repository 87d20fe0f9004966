package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.pose.Placement;

/** The piece of floor under a lifter, for views from above, where the floor is an area. */
final class FloorPatch {

  /** Floor around the lifter, metres. */
  private static final double AROUND = 0.22;

  private FloorPatch() {}

  /** Its corners in order around, as they are seen, metres. */
  static List<Vector2D> corners(Scene view) {
    Placement where = view.position().placement();
    List<Vector3D> under = new ArrayList<>();
    for (int i = 0; i < where.tree().size(); i++) {
      under.add(where.origin(i));
    }
    double west = under.stream().mapToDouble(Vector3D::getX).min().orElse(0) - AROUND;
    double east = under.stream().mapToDouble(Vector3D::getX).max().orElse(0) + AROUND;
    double left = under.stream().mapToDouble(Vector3D::getZ).min().orElse(0) - AROUND;
    double right = under.stream().mapToDouble(Vector3D::getZ).max().orElse(0) + AROUND;
    return List.of(
        view.seen(new Vector3D(west, 0, left)),
        view.seen(new Vector3D(east, 0, left)),
        view.seen(new Vector3D(east, 0, right)),
        view.seen(new Vector3D(west, 0, right)));
  }
}
