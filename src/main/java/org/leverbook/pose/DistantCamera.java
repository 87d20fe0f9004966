package org.leverbook.pose;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;

/**
 * A camera so far away that everything has one scale (weak perspective): what is nearer does not
 * appear larger. At six metres a limb 30 cm nearer than the lifter's middle would appear 5 %
 * larger; that is left out.
 *
 * @param frame x to the picture's right, y to its top, z towards the viewer
 * @param scale pixels per metre
 * @param origin where the world's origin appears, pixels
 */
public record DistantCamera(Frame frame, double scale, Vector2D origin) implements Camera {

  @Override
  public Vector2D project(Vector3D place) {
    return new Vector2D(
        origin.getX() + scale * frame.x().dotProduct(place),
        origin.getY() - scale * frame.y().dotProduct(place));
  }

  @Override
  public Sight sight(Vector2D pixel) {
    return new Sight(
        frame.x(),
        (pixel.getX() - origin.getX()) / scale,
        frame.y(),
        (origin.getY() - pixel.getY()) / scale);
  }

  @Override
  public Vector3D place(Vector2D pixel, Vector3D like) {
    Sight sight = sight(pixel);
    return new Vector3D(
        sight.acrossAt(),
        frame.x(),
        sight.upAt(),
        frame.y(),
        like.dotProduct(frame.z()),
        frame.z());
  }

  @Override
  public double perMetre(Vector3D place) {
    return scale;
  }

  @Override
  public Camera moved(Frame turn, Vector3D shift) {
    Frame turned = turn.turning(frame);
    Vector2D away =
        new Vector2D(scale * turned.x().dotProduct(shift), -scale * turned.y().dotProduct(shift));
    return new DistantCamera(turned, scale, origin.subtract(away));
  }
}
