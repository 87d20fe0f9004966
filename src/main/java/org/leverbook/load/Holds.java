package org.leverbook.load;

import java.util.List;
import java.util.stream.Collectors;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.pose.Placement;

/** One handle held at several places: a point midway between them, its force in equal parts. */
final class Holds {

  private Holds() {}

  static Vector3D middle(List<Hold> holds, Placement where) {
    Vector3D middle = Vector3D.ZERO;
    for (Hold hold : holds) {
      middle = middle.add(hold.point(where).scalarMultiply(1.0 / holds.size()));
    }
    return middle;
  }

  static List<Force> share(String source, List<Hold> holds, Placement where, Vector3D newtons) {
    Vector3D each = newtons.scalarMultiply(1.0 / holds.size());
    return holds.stream().map(h -> h.force(source, where, each)).toList();
  }

  static String words(List<Hold> holds) {
    return holds.stream().map(Hold::word).collect(Collectors.joining(" and "));
  }
}
