package org.leverbook.body;

import static org.leverbook.body.JointRanges.limit;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.data.Recent;

/**
 * The freedoms of each joint: axes, order, ranges.
 *
 * <p>Order and axes follow the ISB recommendations (Wu et al. 2002 for hip, ankle and spine; Wu et
 * al. 2005 for the upper limb): flexion about Z, then abduction about the carried X, then rotation
 * about the carried Y. The shoulder keeps this order too, where Wu et al. recommend plane of
 * elevation, elevation, rotation: that order is undefined for a hanging arm, which is where most
 * lifts begin or end.
 */
final class JointBuilder {

  /** A freedom that bone and ligament hold, not muscle: it takes a moment but does not turn. */
  private static final double HELD = 0;

  /** They depend on nothing else of a person. */
  private record Which(JointId id, Side side, Sex sex) {}

  private static final Recent<Which, List<Freedom>> FREEDOMS =
      new Recent<>(
          JointId.values().length * Side.values().length * Sex.values().length,
          which -> freedoms(which.id, which.side, which.sex));

  private JointBuilder() {}

  static Joint of(JointId id, Side side, Vector3D centre, Sex sex) {
    return new Joint(id.word(), side, id.muscles(), centre, FREEDOMS.get(new Which(id, side, sex)));
  }

  private static List<Freedom> freedoms(JointId id, Side side, Sex sex) {
    return switch (id) {
      case HIP -> hip(side, sex);
      case KNEE, ANKLE, BALL -> leg(id, side);
      case SHOULDER_GIRDLE, SHOULDER, ELBOW, FOREARM, WRIST, GRIP -> arm(id, side);
      default -> spine(id);
    };
  }

  private static List<Freedom> hip(Side side, Sex sex) {
    return List.of(
        flexion(
            Motion.FLEXION, limit("hip", "extension"), JointRanges.passive("hip", "flexion", sex)),
        abduction(side, Motion.ABDUCTION, limit("hip", "adduction"), limit("hip", "abduction")),
        rotation(
            side,
            Motion.ROTATION,
            limit("hip", "external_rotation"),
            limit("hip", "internal_rotation")));
  }

  private static List<Freedom> leg(JointId id, Side side) {
    return switch (id) {
      case KNEE ->
          List.of(
              new Freedom(
                  Motion.FLEXION,
                  Vector3D.MINUS_K,
                  -limit("knee", "hyperextension"),
                  limit("knee", "flexion")),
              abduction(side, Motion.ABDUCTION, HELD, HELD),
              rotation(side, Motion.ROTATION, HELD, HELD));
      case ANKLE ->
          List.of(
              flexion(
                  Motion.DORSIFLEXION,
                  limit("ankle", "plantarflexion"),
                  limit("ankle", "dorsiflexion_loaded_knee_bent")),
              abduction(
                  side,
                  Motion.EVERSION,
                  limit("subtalar", "inversion"),
                  limit("subtalar", "eversion")),
              // No published range for turning the foot under the shank was found; knee and hip
              // give most of it.
              rotation(side, Motion.ROTATION, Math.toRadians(30), Math.toRadians(30)));
      // The ball of the foot.
      default ->
          List.of(
              new Freedom(
                  Motion.FLEXION,
                  Vector3D.MINUS_K,
                  -limit("first_mtp", "extension"),
                  limit("first_mtp", "flexion")));
    };
  }

  private static List<Freedom> arm(JointId id, Side side) {
    return switch (id) {
      case SHOULDER_GIRDLE ->
          List.of(
              rotation(
                  side,
                  Motion.PROTRACTION,
                  limit("sternoclavicular", "retraction"),
                  limit("sternoclavicular", "protraction")),
              abduction(
                  side,
                  Motion.ELEVATION,
                  limit("sternoclavicular", "depression"),
                  limit("sternoclavicular", "elevation")),
              flexion(
                  Motion.BACKWARD_ROTATION, 0, limit("sternoclavicular", "posterior_rotation")));
      case SHOULDER ->
          List.of(
              flexion(
                  Motion.FLEXION,
                  limit("shoulder_complex", "extension"),
                  limit("shoulder_complex", "flexion")),
              abduction(
                  side,
                  Motion.ABDUCTION,
                  limit("shoulder_complex", "adduction"),
                  limit("shoulder_complex", "abduction")),
              rotation(
                  side,
                  Motion.ROTATION,
                  limit("shoulder_complex", "external_rotation"),
                  limit("shoulder_complex", "internal_rotation")));
      case ELBOW ->
          List.of(
              flexion(Motion.FLEXION, limit("elbow", "hyperextension"), limit("elbow", "flexion")),
              abduction(side, Motion.ABDUCTION, HELD, HELD));
      case FOREARM ->
          // The tables count from thumb forward; here zero is the anatomical position, palm
          // forward.
          List.of(
              rotation(
                  side,
                  Motion.PRONATION,
                  0,
                  limit("forearm", "pronation") + limit("forearm", "supination")));
      case WRIST ->
          List.of(
              flexion(Motion.FLEXION, limit("wrist", "extension"), limit("wrist", "flexion")),
              // Zero axis towards the little finger: in the anatomical position that is towards the
              // midline.
              new Freedom(
                  Motion.ULNAR_DEVIATION,
                  new Vector3D(side.sign(), 0, 0),
                  -limit("wrist", "radial_deviation"),
                  limit("wrist", "ulnar_deviation")));
      // The grip: fingers close a quarter turn. Common practice, no source.
      default -> List.of(flexion(Motion.FLEXION, 0, Math.PI / 2));
    };
  }

  /** Joints of the spine: one level's range is its share of the range of its region. */
  private static List<Freedom> spine(JointId id) {
    String region =
        id.compareTo(JointId.L1_L2) <= 0
            ? "lumbar"
            : id.compareTo(JointId.T1_T2) <= 0 ? "thoracic" : "cervical";
    double flexion = share(id, region, "wp_flexext_deg");
    double side = share(id, region, "wp_latbend_one_side_deg");
    double turn = share(id, region, "wp_axial_one_side_deg");
    if (!region.equals("cervical")) {
      flexion = Body.flexionShare(id) / regionShare(region);
    }
    return List.of(
        new Freedom(
            Motion.FLEXION,
            Vector3D.MINUS_K,
            -flexion * limit(region, "extension"),
            flexion * limit(region, "flexion")),
        symmetric(Motion.SIDE_BENDING, Vector3D.PLUS_I, side * limit(region, "lateral_flexion")),
        symmetric(Motion.TURNING, Vector3D.PLUS_J, turn * limit(region, "rotation")));
  }

  private static double regionShare(String region) {
    return JointId.spine().stream()
        .filter(j -> (j.compareTo(JointId.L1_L2) <= 0) == region.equals("lumbar"))
        .mapToDouble(Body::flexionShare)
        .sum();
  }

  /**
   * A level's part of its region, in proportion to the cadaver ranges of White and Panjabi (1990).
   */
  private static double share(JointId id, String region, String column) {
    double sum =
        JointId.column().stream()
            .filter(j -> regionOf(j).equals(region))
            .mapToDouble(j -> BodyBuilder.level(j).optionalNumber(column).orElse(0))
            .sum();
    return BodyBuilder.level(id).optionalNumber(column).orElse(0) / sum;
  }

  private static String regionOf(JointId id) {
    return id.compareTo(JointId.L1_L2) <= 0
        ? "lumbar"
        : id.compareTo(JointId.T1_T2) <= 0 ? "thoracic" : "cervical";
  }

  private static Freedom symmetric(Motion motion, Vector3D axis, double limit) {
    return new Freedom(motion, axis, -limit, limit);
  }

  private static Freedom flexion(Motion motion, double back, double forward) {
    return new Freedom(motion, Vector3D.PLUS_K, -back, forward);
  }

  /** Away from the midline: about -X on the right, +X on the left. */
  private static Freedom abduction(Side side, Motion motion, double inward, double outward) {
    return new Freedom(motion, new Vector3D(-side.sign(), 0, 0), -inward, outward);
  }

  /** Front towards the midline: about +Y on the right, -Y on the left. */
  private static Freedom rotation(Side side, Motion motion, double outward, double inward) {
    return new Freedom(motion, new Vector3D(0, side.sign(), 0), -outward, inward);
  }
}
