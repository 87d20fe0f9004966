package org.leverbook.pose;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;

/**
 * How places of the world appear in a picture.
 *
 * <p>Pixels run to the right and down from the upper left corner. The camera's frame: x to the
 * picture's right, y to its top, z towards the viewer. A camera whose frame is the world's looks
 * squarely at a lifter's right side.
 *
 * <p>Worked case: a {@link DistantCamera} with the world's frame, 200 pixels a metre and its origin
 * at pixel (500, 600) shows the place 1 m forward and 2 m up at pixel (700, 200).
 */
public sealed interface Camera permits DistantCamera, NearCamera {

  /**
   * How the camera is turned.
   *
   * @return x to the picture's right, y to its top, z towards the viewer
   */
  Frame frame();

  /**
   * Where a place appears.
   *
   * @param place in the world, metres
   * @return pixels, to the right and down
   */
  Vector2D project(Vector3D place);

  /**
   * All places that appear at a pixel.
   *
   * @param pixel to the right and down
   * @return the line of sight
   */
  Sight sight(Vector2D pixel);

  /**
   * The place that appears at a pixel and is as far from the viewer as another.
   *
   * @param pixel to the right and down
   * @param like any place of that plane square to the view, in the world, metres
   * @return in the world, metres
   */
  Vector3D place(Vector2D pixel, Vector3D like);

  /**
   * How many pixels a metre takes that lies square to the view.
   *
   * @param place where it is, in the world, metres
   * @return pixels per metre
   */
  double perMetre(Vector3D place);

  /**
   * The same camera after everything, camera and scene, was turned about the origin and then
   * shifted.
   *
   * @param turn images of the world's axes
   * @param shift metres
   * @return the moved camera
   */
  Camera moved(Frame turn, Vector3D shift);
}
