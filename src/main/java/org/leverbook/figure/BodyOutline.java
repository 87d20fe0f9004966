package org.leverbook.figure;

import java.awt.Shape;
import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.Body;
import org.leverbook.body.Girths;
import org.leverbook.body.JointId;
import org.leverbook.body.Links;
import org.leverbook.body.Side;
import org.leverbook.figure.LimbOutline.Station;
import org.leverbook.pose.Placement;
import org.leverbook.statics.View;

/**
 * The flesh of a placed body, as it is seen.
 *
 * <p>Thickness comes from {@link Girths}; how it is spread along a limb and to front and back is
 * drawn by eye (no source) and carries no number.
 */
final class BodyOutline {

  /** A limb that is so much farther away than the other is behind it, metres. */
  private static final double BEHIND = 0.12;

  private final Body body;
  private final Placement where;
  private final Girths girths;
  private final boolean gripping;

  private final Sight sight;

  BodyOutline(Body body, Placement where, boolean gripping, Sight sight) {
    this.sight = sight;
    this.body = body;
    this.where = where;
    this.girths = Girths.of(body.person());
    this.gripping = gripping;
  }

  /** The pieces from back to front. */
  List<Silhouette> pieces() {
    if (sight.view().equals(View.FRONT)) {
      return solids();
    }
    if (!sight.fromSide()) {
      return nearestLast();
    }
    return List.of(
        new Silhouette("far leg", true, leg(Side.LEFT)),
        new Silhouette("far arm", true, arm(Side.LEFT)),
        new Silhouette(
            "trunk and head", false, new TrunkOutline(body, where, girths, sight).area()),
        new Silhouette("near leg", false, leg(Side.RIGHT)),
        new Silhouette("near arm", false, arm(Side.RIGHT)));
  }

  private List<Silhouette> solids() {
    return List.of(
        new Silhouette("trunk and head", false, new FrontTrunk(body, where, girths, sight).area()),
        new Silhouette("right leg", false, leg(Side.RIGHT)),
        new Silhouette("left leg", false, leg(Side.LEFT)),
        new Silhouette("right arm", false, arm(Side.RIGHT)),
        new Silhouette("left arm", false, arm(Side.LEFT)));
  }

  /** What is nearer to the eye covers what is farther; a limb well behind its twin is paler. */
  private List<Silhouette> nearestLast() {
    List<Silhouette> solids = solids();
    List<Double> depths = new ArrayList<>();
    depths.add(depth(JointId.L5_S1.word(), JointId.T7_T8.word(), JointId.C7_T1.word()));
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      depths.add(depth(JointId.HIP.on(side), JointId.KNEE.on(side), JointId.ANKLE.on(side)));
    }
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      depths.add(depth(JointId.SHOULDER.on(side), JointId.ELBOW.on(side), JointId.WRIST.on(side)));
    }
    List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3, 4));
    order.sort(Comparator.comparingDouble(depths::get));
    List<Silhouette> pieces = new ArrayList<>();
    for (int i : order) {
      int twin = i == 0 ? 0 : i % 2 == 1 ? i + 1 : i - 1;
      Silhouette piece = solids.get(i);
      boolean far = depths.get(i) < depths.get(twin) - BEHIND;
      pieces.add(new Silhouette(piece.name(), far, piece.area()));
    }
    return pieces;
  }

  private double depth(String... joints) {
    return Arrays.stream(joints).map(where::centre).mapToDouble(sight::depth).average().orElse(0);
  }

  private Area leg(Side side) {
    double thigh = girths.diameter("thighcircumference");
    double above = girths.diameter("lowerthighcircumference");
    double calf = girths.diameter("calfcircumference");
    double ankle = girths.diameter("anklecircumference");
    Area leg = new Area();
    add(
        leg,
        limb(
            JointId.HIP,
            JointId.KNEE,
            side,
            new Station(0.02, 0.42 * thigh, 0.50 * thigh),
            new Station(0.25, 0.44 * thigh, 0.49 * thigh),
            new Station(0.55, 0.43 * thigh, 0.38 * thigh),
            new Station(0.80, 0.50 * above, 0.46 * above),
            new Station(0.98, 0.46 * above, 0.44 * above)));
    add(
        leg,
        limb(
            JointId.KNEE,
            JointId.ANKLE,
            side,
            new Station(0.02, 0.44 * above, 0.42 * above),
            new Station(0.12, 0.38 * calf, 0.46 * calf),
            new Station(0.32, 0.36 * calf, 0.60 * calf),
            new Station(0.60, 0.31 * calf, 0.42 * calf),
            new Station(0.88, 0.42 * ankle, 0.50 * ankle),
            new Station(1.00, 0.46 * ankle, 0.54 * ankle)));
    new FootOutline(body, where, side, ankle, sight).shapes().forEach(shape -> add(leg, shape));
    return leg;
  }

  private Area arm(Side side) {
    double upper = girths.diameter("bicepscircumferenceflexed");
    double fore = girths.diameter("forearmcircumferenceflexed");
    double wrist = girths.diameter("wristcircumference");
    Area arm = new Area();
    add(
        arm,
        limb(
            JointId.SHOULDER,
            JointId.ELBOW,
            side,
            new Station(0.00, 0.52 * upper, 0.52 * upper),
            new Station(0.25, 0.50 * upper, 0.50 * upper),
            new Station(0.55, 0.46 * upper, 0.46 * upper),
            new Station(1.00, 0.38 * upper, 0.38 * upper)));
    add(
        arm,
        limb(
            JointId.ELBOW,
            JointId.WRIST,
            side,
            new Station(0.00, 0.42 * fore, 0.42 * fore),
            new Station(0.25, 0.47 * fore, 0.47 * fore),
            new Station(0.65, 0.36 * fore, 0.36 * fore),
            new Station(1.00, 0.52 * wrist, 0.52 * wrist)));
    hand(side).forEach(shape -> add(arm, shape));
    return arm;
  }

  /** A fist around the bar, or an open hand. */
  private List<Shape> hand(Side side) {
    Links links = body.links();
    double wrist = girths.diameter("wristcircumference");
    int hand = where.tree().distalOf(JointId.WRIST.on(side));
    Vector2D from = sight.seen(where.origin(hand));
    Vector2D grip = sight.seen(where.centre(JointId.GRIP.on(side)));
    if (!sight.fromSide() && !gripping) {
      double palm = 0.5 * girths.length("handbreadth");
      return List.of(
          solid(
              hand,
              where.toWorld(hand, new Vector3D(0, -links.fingertip(), 0)),
              List.of(
                  new Station(0, 0.5 * wrist, 0.5 * wrist),
                  new Station(0.4, palm, palm),
                  new Station(0.93, 0.6 * palm, 0.6 * palm)),
              0.4));
    }
    Vector2D forward = sight.seen(where.frame(hand).x());
    if (!gripping) {
      Vector2D tip = sight.seen(where.toWorld(hand, new Vector3D(0, -links.fingertip(), 0)));
      return List.of(
          new LimbOutline(
                  from,
                  tip,
                  forward,
                  List.of(
                      new Station(0, 0.5 * wrist, 0.5 * wrist),
                      new Station(0.4, 0.5 * wrist, 0.5 * wrist),
                      new Station(0.93, 0.2 * wrist, 0.2 * wrist)))
              .path());
    }
    // Palm and curled fingers: a fist is about as deep as the hand is broad across two fingers.
    double fist = 0.44 * girths.length("handbreadth");
    Shape palm =
        new LimbOutline(
                from,
                grip,
                forward,
                List.of(
                    new Station(0, 0.5 * wrist, 0.5 * wrist),
                    new Station(0.6, 0.85 * fist, 0.85 * fist),
                    new Station(1, 0.8 * fist, 0.8 * fist)))
            .path();
    return List.of(palm, Curves.disc(grip, fist));
  }

  private Shape limb(JointId from, JointId to, Side side, Station... stations) {
    int segment = where.tree().distalOf(from.on(side));
    if (!sight.fromSide()) {
      return solid(segment, where.centre(to.on(side)), List.of(stations), 1);
    }
    Vector2D forward = sight.seen(where.frame(segment).x());
    return new LimbOutline(
            sight.seen(where.origin(segment)),
            sight.seen(where.centre(to.on(side))),
            forward,
            new ArrayList<>(List.of(stations)))
        .path();
  }

  /** Round about its axis from end to end, or flat from front to back, with rounded ends. */
  private Area solid(int segment, Vector3D to, List<Station> stations, double flat) {
    Vector3D from = where.origin(segment);
    Vector3D axis = to.subtract(from);
    Vector3D ahead = where.frame(segment).x();
    Vector3D aside = where.frame(segment).z();
    List<Loft.Section> sections = new ArrayList<>();
    for (Station s : stations) {
      double radius = (s.front() + s.back()) / 2;
      Vector3D middle =
          from.add(axis.scalarMultiply(s.along()))
              .add(ahead.scalarMultiply((s.front() - s.back()) / 2));
      sections.add(
          new Loft.Section(
              middle, ahead.scalarMultiply(flat * radius), aside.scalarMultiply(radius)));
    }
    Loft loft = new Loft(sight);
    Area area = loft.through(sections);
    for (Loft.Section end : List.of(sections.get(0), sections.get(sections.size() - 1))) {
      Loft.Section ball =
          loft.ball(end.centre(), 0.98 * end.one().getNorm() / flat * Math.min(1, flat));
      area.add(loft.through(List.of(ball, ball)));
    }
    return area;
  }

  private static void add(Area whole, Shape shape) {
    whole.add(new Area(shape));
  }
}
