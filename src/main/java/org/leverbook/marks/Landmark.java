package org.leverbook.marks;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Girths;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.quantity.Refused;
import org.leverbook.solve.Feature;
import org.leverbook.solve.Features;

/** A place of the body that can be marked in a picture, by its anatomical name. */
public enum Landmark {
  /** Centre of the hip joint. */
  HIP("hip", true, 0.02),
  /** Centre of the knee. */
  KNEE("knee", true, 0.01),
  /** Centre of the ankle. */
  ANKLE("ankle", true, 0.01),
  /** Rear end of the sole. */
  HEEL("heel", true, 0.01),
  /** Tip of the toes. */
  TOE("toe", true, 0.01),
  /** Centre of the shoulder joint. */
  SHOULDER("shoulder", true, 0.02),
  /** Centre of the elbow. */
  ELBOW("elbow", true, 0.01),
  /** Centre of the wrist. */
  WRIST("wrist", true, 0.01),
  /** Centre of a gripped bar or handle. */
  HAND("hand", true, 0.01),
  /** Opening of the ear. */
  EAR("ear", true, 0.03),
  /** Base of the neck, C7/T1. */
  NECK("neck", false, 0.02),
  /** Low back, L5/S1. */
  LOW_BACK("low back", false, 0.03);

  private final String word;
  private final boolean paired;
  private final double doubt;

  Landmark(String word, boolean paired, double doubt) {
    this.word = word;
    this.paired = paired;
    this.doubt = doubt;
  }

  /**
   * Its name without side.
   *
   * @return as in "hip"
   */
  public String word() {
    return word;
  }

  /**
   * Whether there is a left and a right one.
   *
   * @return false for those of the midline
   */
  public boolean paired() {
    return paired;
  }

  /** How far from its true place it may well be marked, metres: an assumption, no source. */
  double doubt() {
    return doubt;
  }

  /**
   * A landmark by name.
   *
   * @param name with or without a side in front, as in "left knee"
   * @return the landmark, or empty
   */
  static Optional<Landmark> named(String name) {
    String bare = name.replaceFirst("^(left|right) ", "");
    return Arrays.stream(values())
        .filter(l -> l.word.equals(bare) && (l.paired || bare.equals(name)))
        .findFirst();
  }

  /** The names there are, for a refusal. */
  static String all() {
    return Arrays.stream(values()).map(Landmark::word).collect(Collectors.joining(", "));
  }

  /** A landmark by name, or a sentence that names those there are. */
  static Landmark asked(String name) {
    String tidy = name == null ? "" : name.strip().toLowerCase(Locale.ROOT);
    return named(tidy)
        .orElseThrow(
            () ->
                new Refused(
                    "There is no landmark \""
                        + name
                        + "\"; there are "
                        + all()
                        + "; \"left\" or \"right\" may stand in front."));
  }

  /** Where it is on one body. */
  Feature.Point on(Body body, Side side) {
    return switch (this) {
      case HIP, KNEE, ANKLE, SHOULDER, ELBOW, WRIST ->
          Features.joint(body, JointId.valueOf(name()).on(side));
      case HEEL -> sole(body, side, "heel");
      case TOE -> sole(body, side, "toe tip");
      case HAND -> Features.point(body.place(Site.HAND, side));
      case NECK -> Features.joint(body, JointId.C7_T1.word());
      case LOW_BACK -> Features.joint(body, JointId.L5_S1.word());
      case EAR -> ear(body, side);
    };
  }

  /** Middle of the sole's points of that name. */
  private static Feature.Point sole(Body body, Side side, String name) {
    var points = body.soles().stream().filter(s -> s.name().startsWith(side.of(name))).toList();
    Vector3D sum = points.stream().map(Body.SolePoint::place).reduce(Vector3D.ZERO, Vector3D::add);
    return new Feature.Point(points.get(0).segment(), sum.scalarMultiply(1.0 / points.size()));
  }

  /** By survey means (ANSUR II): its height below the vertex, half a head's breadth sideways. */
  private static Feature.Point ear(Body body, Side side) {
    Girths girths = Girths.of(body.person());
    double up = body.links().head() - girths.length("tragiontopofhead");
    double aside = side.sign() * girths.length("headbreadth") / 2;
    return new Feature.Point(body.tree().indexOf("head"), new Vector3D(0, up, aside));
  }
}
