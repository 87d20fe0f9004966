package org.leverbook.figure;

import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.Body;
import org.leverbook.body.Girths;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.pose.Placement;

/** A foot with heel, instep, ball and toes; the toes turn about the ball. */
final class FootOutline {

  private final Body body;
  private final Placement where;
  private final Side side;
  private final double ankle;
  private final Sight sight;

  FootOutline(Body body, Placement where, Side side, double ankle, Sight sight) {
    this.sight = sight;
    this.body = body;
    this.where = where;
    this.side = side;
    this.ankle = ankle;
  }

  List<Shape> shapes() {
    int foot = where.tree().distalOf(JointId.ANKLE.on(side));
    int toes = where.tree().distalOf(JointId.BALL.on(side));
    Vector3D ball = where.tree().segment(toes).joint().centre();
    double tip = toeTip(toes).getX();
    double sole = -body.links().footHeight();
    double heel = ball.getX() + tip - body.links().footLength();
    // Shares of ankle height and foot length are drawn by eye (no source); the sole and both ends
    // are true.
    Shape main =
        outline(
            foot,
            new double[][] {
              {-0.52 * ankle, 0.15 * -sole},
              {0.50 * ankle, 0.12 * -sole},
              {0.42 * ball.getX(), 0.22 * sole},
              {0.78 * ball.getX(), 0.48 * sole},
              {1.08 * ball.getX(), 0.72 * sole},
              {1.02 * ball.getX(), 0.97 * sole},
              {0.92 * ball.getX(), sole},
              {0.60 * ball.getX(), sole},
              {0.30 * heel, sole},
              {0.72 * heel, sole},
              {0.95 * heel, 0.90 * sole},
              {heel, 0.70 * sole},
              {0.92 * heel, 0.38 * sole},
            });
    double toeSole = toeTip(toes).getY();
    Shape front =
        outline(
            toes,
            new double[][] {
              {-0.20 * tip, 0.42 * -sole + toeSole},
              {0.45 * tip, 0.34 * -sole + toeSole},
              {0.90 * tip, 0.20 * -sole + toeSole},
              {tip, 0.08 * -sole + toeSole},
              {0.97 * tip, 0.03 * -sole + toeSole},
              {0.85 * tip, toeSole},
              {0.30 * tip, toeSole},
              {-0.20 * tip, toeSole},
            });
    return List.of(main, front);
  }

  private Vector3D toeTip(int toes) {
    return body.soles().stream()
        .filter(p -> p.segment() == toes)
        .map(Body.SolePoint::place)
        .findFirst()
        .orElseThrow();
  }

  private Shape outline(int segment, double[][] points) {
    List<Vector2D> around = new ArrayList<>();
    if (!sight.fromSide()) {
      double half = 0.5 * Girths.of(body.person()).length("footbreadthhorizontal");
      for (double[] p : points) {
        // Upper parts are narrower than the sole.
        double breadth = p[1] > 0 ? 0.75 * half : half;
        around.add(sight.seen(where.toWorld(segment, new Vector3D(p[0], p[1], breadth))));
        around.add(sight.seen(where.toWorld(segment, new Vector3D(p[0], p[1], -breadth))));
      }
      return Loft.hull(around);
    }
    for (double[] p : points) {
      around.add(sight.seen(where.toWorld(segment, new Vector3D(p[0], p[1], 0))));
    }
    return Curves.closed(around);
  }
}
