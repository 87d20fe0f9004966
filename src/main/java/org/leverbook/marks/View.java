package org.leverbook.marks;

import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.Part;
import org.leverbook.body.Side;
import org.leverbook.pose.Camera;
import org.leverbook.pose.DistantCamera;
import org.leverbook.pose.Frame;
import org.leverbook.pose.NearCamera;

/**
 * What a coach says of how a photo was taken.
 *
 * @param perMetre pixels per metre where the scale was taken; empty while unsaid
 * @param by the part whose own length gives the scale; empty where two points do
 * @param nearer how much nearer to the camera than the lifter's middle the scale was taken, metres
 * @param distance from the camera to the lifter's middle, metres; empty for one far away
 * @param rolled how far the world's vertical leans to the right in the picture, radians
 * @param down how far the camera looks down, radians
 * @param shown the side seen; the midline while unsaid
 */
record View(
    Optional<Double> perMetre,
    Optional<Part> by,
    double nearer,
    Optional<Double> distance,
    double rolled,
    double down,
    Side shown) {

  static View unsaid() {
    return new View(Optional.empty(), Optional.empty(), 0, Optional.empty(), 0, 0, Side.MIDLINE);
  }

  View scale(double pixelsPerMetre) {
    return new View(
        Optional.of(pixelsPerMetre), Optional.empty(), nearer, distance, rolled, down, shown);
  }

  View scale(Part part) {
    return new View(Optional.empty(), Optional.of(part), nearer, distance, rolled, down, shown);
  }

  View nearer(double metres) {
    return new View(perMetre, by, metres, distance, rolled, down, shown);
  }

  View distance(double metres) {
    return new View(perMetre, by, nearer, Optional.of(metres), rolled, down, shown);
  }

  View rolled(double radians) {
    return new View(perMetre, by, nearer, distance, radians, down, shown);
  }

  View down(double radians) {
    return new View(perMetre, by, nearer, distance, rolled, radians, shown);
  }

  View shown(Side side) {
    return new View(perMetre, by, nearer, distance, rolled, down, side);
  }

  /** The camera, the world's origin in the middle of the picture at the lifter's distance. */
  Camera camera(double scale, int width, int height) {
    Vector2D middle = new Vector2D(width / 2.0, height / 2.0);
    return distance
        .<Camera>map(
            far ->
                new NearCamera(
                    frame().z().scalarMultiply(far), frame(), scale * (far - nearer), middle))
        .orElseGet(() -> new DistantCamera(frame(), scale, middle));
  }

  private Frame frame() {
    double c = Math.cos(down);
    double s = Math.sin(down);
    Vector3D up = new Vector3D(0, c, -s);
    double cr = Math.cos(rolled);
    double sr = Math.sin(rolled);
    return new Frame(
        new Vector3D(cr, Vector3D.PLUS_I, sr, up),
        new Vector3D(-sr, Vector3D.PLUS_I, cr, up),
        new Vector3D(0, s, c));
  }

  /** Which way a lifter seen from that side faces. */
  static Frame facing(Side side) {
    return side == Side.LEFT ? Frame.aboutVertical(Math.PI) : Frame.WORLD;
  }
}
