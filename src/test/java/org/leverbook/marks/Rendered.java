package org.leverbook.marks;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javax.imageio.ImageIO;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.Body;
import org.leverbook.body.Side;
import org.leverbook.load.Barbell;
import org.leverbook.pose.Camera;
import org.leverbook.pose.Frame;
import org.leverbook.pose.NearCamera;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/** A position as a known camera sees it: a stick figure as a photo, and its marks. */
final class Rendered {

  static final List<Landmark> NEAR =
      List.of(
          Landmark.HIP,
          Landmark.KNEE,
          Landmark.ANKLE,
          Landmark.HEEL,
          Landmark.TOE,
          Landmark.SHOULDER,
          Landmark.ELBOW,
          Landmark.WRIST,
          Landmark.HAND,
          Landmark.EAR);

  private static final int WIDTH = 1600;
  private static final int HEIGHT = 1200;

  /** Pixels at one metre's distance: a common phone's main camera, 65° wide. */
  private static final double FOCAL = 1250;

  final Position position;
  final Side shown;
  final Camera camera;
  final double distance;
  final Path file;

  private Rendered(Position position, Side shown, Camera camera, double distance, Path file) {
    this.position = position;
    this.shown = shown;
    this.camera = camera;
    this.distance = distance;
    this.file = file;
  }

  /**
   * A camera at the height of the lifter's middle.
   *
   * @param offSquare degrees; positive where the lifter's front is turned towards the camera
   */
  static Rendered of(Position position, double offSquare, double metres, Path file) {
    return of(position, Side.RIGHT, offSquare, metres, file);
  }

  /** The same from either side. */
  static Rendered of(Position position, Side shown, double offSquare, double metres, Path file) {
    return of(position, shown, offSquare, metres, 0, 0, file);
  }

  /**
   * A camera higher or lower than the lifter's middle, looking down on it.
   *
   * @param above the lifter's middle, metres
   * @param down degrees
   */
  static Rendered of(
      Position position,
      Side shown,
      double offSquare,
      double metres,
      double above,
      double down,
      Path file) {
    double square = shown == Side.LEFT ? Math.PI : 0;
    double a = square + (shown == Side.LEFT ? -1 : 1) * Math.toRadians(offSquare);
    double tilt = Math.toRadians(down);
    Frame level = Frame.aboutVertical(a);
    Frame frame =
        new Frame(
            level.x(),
            new Vector3D(Math.cos(tilt), level.y(), -Math.sin(tilt), level.z()),
            new Vector3D(Math.sin(tilt), level.y(), Math.cos(tilt), level.z()));
    Vector3D middle = position.placement().centreOfMass();
    Vector3D place = middle.add(frame.z().scalarMultiply(metres)).add(new Vector3D(0, above, 0));
    Camera camera =
        new NearCamera(place, frame, FOCAL * metres / 3.6, new Vector2D(WIDTH / 2.0, HEIGHT / 2.0));
    Rendered rendered = new Rendered(position, shown, camera, metres, file);
    if (!Files.exists(file)) {
      rendered.write();
    }
    return rendered;
  }

  private void write() {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D page = image.createGraphics();
    page.setColor(new Color(0xd8, 0xd2, 0xc4));
    page.fillRect(0, 0, WIDTH, HEIGHT);
    page.setColor(new Color(0x8a, 0x80, 0x70));
    Vector2D floor = camera.project(Vector3D.ZERO);
    page.fillRect(0, (int) floor.getY(), WIDTH, HEIGHT);
    page.setColor(new Color(0x30, 0x50, 0x70));
    page.setStroke(new java.awt.BasicStroke(14));
    for (Side side :
        shown == Side.RIGHT ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.RIGHT, Side.LEFT)) {
      Vector2D before = null;
      for (Landmark landmark :
          List.of(
              Landmark.TOE,
              Landmark.HEEL,
              Landmark.ANKLE,
              Landmark.KNEE,
              Landmark.HIP,
              Landmark.SHOULDER,
              Landmark.ELBOW,
              Landmark.WRIST,
              Landmark.HAND)) {
        Vector2D at = pixel(landmark, side);
        if (before != null) {
          page.draw(new Line2D.Double(before.getX(), before.getY(), at.getX(), at.getY()));
        }
        before = at;
      }
    }
    Vector2D ear = pixel(Landmark.EAR, shown);
    page.fill(new Ellipse2D.Double(ear.getX() - 35, ear.getY() - 45, 70, 90));
    page.dispose();
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      ImageIO.write(image, "png", file.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Vector2D pixel(Landmark landmark, Side side) {
    Body body = position.body();
    Placement where = position.placement();
    var point = landmark.on(body, side);
    return camera.project(where.toWorld(point.segment(), point.local()));
  }

  /** The photo with its near side marked, each mark off by so many pixels (one deviation). */
  Photo marked(double noise, long seed) {
    Random random = new Random(seed);
    Photo photo = Photo.of(file.toString());
    Map<String, Vector2D> marks = new LinkedHashMap<>();
    NEAR.forEach(l -> marks.put(l.word(), pixel(l, shown)));
    for (Map.Entry<String, Vector2D> mark : marks.entrySet()) {
      photo =
          photo.mark(
              mark.getKey(),
              mark.getValue().getX() + noise * random.nextGaussian(),
              mark.getValue().getY() + noise * random.nextGaussian());
    }
    return photo;
  }

  /** The scale from an upright rod of one metre through the lifter's middle. */
  Photo scaled(Photo photo) {
    Vector3D middle = position.placement().centreOfMass();
    Vector2D low = camera.project(middle.add(new Vector3D(0, -0.5, 0)));
    Vector2D high = camera.project(middle.add(new Vector3D(0, 0.5, 0)));
    return photo
        .scale(low.getX(), low.getY(), high.getX(), high.getY(), Units.m(1))
        .distance(Units.m(distance));
  }

  /** Stance, turn-out and grip as the coach saw them beside the photo. */
  Photo told(Photo photo) {
    Placement where = position.placement();
    double stance = where.centre("right ankle").distance(where.centre("left ankle"));
    Vector3D foot = where.frame(position.body().tree().indexOf("right foot")).x();
    double grip = where.centre("right grip").distance(where.centre("left grip"));
    Photo seen =
        photo
            .stanceWidth(Units.m(stance))
            .turnOut(Units.deg(Math.toDegrees(Math.asin(foot.getZ()))));
    boolean bar = position.loads().stream().anyMatch(Barbell.class::isInstance);
    return bar ? seen.gripWidth(Units.m(grip)) : seen.handsApart();
  }
}
