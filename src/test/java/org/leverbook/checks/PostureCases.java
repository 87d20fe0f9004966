package org.leverbook.checks;

import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleSupplier;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.Deadlift;
import org.leverbook.load.Barbell;
import org.leverbook.statics.Position;

/**
 * Rows of section B on postures, each found by a lift of the library: B10.
 *
 * <p>Printed: thigh and trunk angles of a squat and a conventional deadlift at the sticking point,
 * with bars near the lifters' best. The thigh is given to the set-up, the trunk comes out. Not
 * printed, and taken: both angles counted from the level, the adult of 80 kg and 178 cm, 180 and
 * 200 kg, the bar low on the back.
 */
final class PostureCases {

  private static final Person ADULT = Person.of(Sex.MALE, kg(80), cm(178));
  private static final double SQUAT_THIGH = 32.54;
  private static final double DEADLIFT_THIGH = 57.42;

  private PostureCases() {}

  static Map<String, DoubleSupplier> rows() {
    Map<String, DoubleSupplier> rows = new LinkedHashMap<>();
    rows.put("B10c", PostureCases::squat);
    rows.put("B10d", PostureCases::deadlift);
    return rows;
  }

  private static double squat() {
    return trunk(
        BackSquat.of(ADULT)
            .holding(Barbell.of(kg(180)))
            .bar(Site.UPPER_BACK_LOW)
            .depth(deg(-SQUAT_THIGH))
            .finish());
  }

  private static double deadlift() {
    Deadlift pull = Deadlift.of(ADULT).holding(Barbell.of(kg(200)));
    double share =
        new BracketingNthOrderBrentSolver(1e-6, 5)
            .solve(100, s -> thigh(pull.at(percent(s))) - DEADLIFT_THIGH, 20, 90);
    return trunk(pull.at(percent(share)));
  }

  /** Trunk above the level, degrees. */
  private static double trunk(Position position) {
    return 90 - position.fact("trunk lean");
  }

  /** Thigh above the level, degrees. */
  private static double thigh(Position position) {
    Vector3D thigh =
        position
            .placement()
            .centre(JointId.HIP.on(Side.RIGHT))
            .subtract(position.placement().centre(JointId.KNEE.on(Side.RIGHT)));
    return Math.toDegrees(Math.asin(thigh.getY() / thigh.getNorm()));
  }
}
