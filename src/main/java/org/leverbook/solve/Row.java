package org.leverbook.solve;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * One number that shall be zero: a sum of features along given directions, of products of features,
 * and of coordinates, less a target.
 *
 * <p>Its unit is metres or radians (or what a unit vector changes by for a radian), so that one
 * tolerance fits all.
 */
final class Row {

  /** A feature along a direction of the world. */
  record Along(Feature feature, Vector3D direction) {}

  /** The scalar product of two features, times a factor. */
  record Product(Feature one, Feature other, double factor) {}

  /** A coordinate times a factor. */
  record Single(int coordinate, double factor) {}

  final List<Along> along = new ArrayList<>();
  final List<Product> products = new ArrayList<>();
  final List<Single> singles = new ArrayList<>();
  double target;

  Row plus(Feature feature, Vector3D direction) {
    along.add(new Along(feature, direction));
    return this;
  }

  Row minus(Feature feature, Vector3D direction) {
    return plus(feature, direction.negate());
  }

  Row product(Feature one, Feature other, double factor) {
    products.add(new Product(one, other, factor));
    return this;
  }

  Row coordinate(int index, double factor) {
    singles.add(new Single(index, factor));
    return this;
  }

  Row equals(double value) {
    target = value;
    return this;
  }
}
