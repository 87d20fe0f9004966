package org.leverbook.pose;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;

/**
 * A camera at a known distance (a pinhole): what is nearer appears larger. A real lens that bends
 * straight lines is not modelled.
 *
 * @param place of the pinhole in the world, metres
 * @param frame x to the picture's right, y to its top, z towards the viewer
 * @param focal how many pixels one metre takes at one metre's distance
 * @param middle where the camera points to, pixels
 */
public record NearCamera(Vector3D place, Frame frame, double focal, Vector2D middle)
    implements Camera {

  @Override
  public Vector2D project(Vector3D seen) {
    Vector3D way = seen.subtract(place);
    double scale = focal / depth(seen);
    return new Vector2D(
        middle.getX() + scale * frame.x().dotProduct(way),
        middle.getY() - scale * frame.y().dotProduct(way));
  }

  /** How far ahead of the pinhole a place is, metres. */
  private double depth(Vector3D seen) {
    return -frame.z().dotProduct(seen.subtract(place));
  }

  @Override
  public Sight sight(Vector2D pixel) {
    // x/depth = u: x - u·depth = 0, which is linear in the place.
    double u = (pixel.getX() - middle.getX()) / focal;
    double v = (middle.getY() - pixel.getY()) / focal;
    Vector3D across = frame.x().add(frame.z().scalarMultiply(u));
    Vector3D up = frame.y().add(frame.z().scalarMultiply(v));
    return new Sight(across, across.dotProduct(place), up, up.dotProduct(place));
  }

  @Override
  public Vector3D place(Vector2D pixel, Vector3D like) {
    double depth = depth(like);
    double u = (pixel.getX() - middle.getX()) / focal;
    double v = (middle.getY() - pixel.getY()) / focal;
    return place.add(new Vector3D(u * depth, frame.x(), v * depth, frame.y(), -depth, frame.z()));
  }

  @Override
  public double perMetre(Vector3D seen) {
    return focal / depth(seen);
  }

  @Override
  public Camera moved(Frame turn, Vector3D shift) {
    return new NearCamera(turn.toWorld(place).add(shift), turn.turning(frame), focal, middle);
  }
}
