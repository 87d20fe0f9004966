package org.leverbook.marks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.load.Load;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/**
 * What was found again of one photo.
 *
 * @param shot the photo
 * @param noise of the marks, pixels
 * @param told whether stance, turn-out and grip were told
 * @param errors found less true, by quantity; a joint whose moment is not known is left out
 */
record Recovered(Shot shot, double noise, boolean told, Map<String, Double> errors) {

  static final String HIP_MOMENT = "hip moment (N·m)";
  static final String OFFERED = "hip moment, best of the poses offered (N·m)";

  private static final List<JointId> JOINTS =
      List.of(JointId.HIP, JointId.KNEE, JointId.ANKLE, JointId.SHOULDER, JointId.ELBOW);

  static Recovered of(Shot shot, double noise, boolean told) {
    Fit fit = shot.marked(noise, told).fit(shot.position().body().person());
    // Which way the lifter is turned a coach has seen.
    fit = shot.view() > 0 ? fit.towardsCamera() : shot.view() < 0 ? fit.awayFromCamera() : fit;
    Map<String, Double> errors = new LinkedHashMap<>();
    Pose truth = shot.position().placement().pose();
    Side side = shot.side();
    for (JointId joint : JOINTS) {
      double off = fit.pose().angle(joint, side, "flexion") - truth.angle(joint, side, "flexion");
      errors.put(joint.word() + " flexion (°)", Math.toDegrees(off));
    }
    errors.put("view (°)", fit.offSquare().to(Units.DEG).getValue().doubleValue() - shot.view());
    moments(shot, fit, errors);
    double best = Double.POSITIVE_INFINITY;
    for (Fit one : fit.solutions()) {
      Map<String, Double> its = new LinkedHashMap<>();
      moments(shot, one, its);
      best = Math.min(best, Math.abs(its.getOrDefault(HIP_MOMENT, best)));
    }
    if (Double.isFinite(best)) {
      errors.put(OFFERED, best);
    }
    return new Recovered(shot, noise, told, errors);
  }

  private static void moments(Shot shot, Fit fit, Map<String, Double> errors) {
    Position again = fit.holding(shot.position().loads().toArray(new Load[0])).position();
    for (JointId joint : JOINTS) {
      // A pose a centimetre off may tip; its leg moments are then not known.
      if (again.knows(joint, shot.side())) {
        errors.put(
            joint.word() + " moment (N·m)",
            again.moment(joint, shot.side()).signed()
                - shot.position().moment(joint, shot.side()).signed());
      }
    }
  }

  double error(String quantity) {
    return Math.abs(errors.get(quantity));
  }

  static List<String> quantities() {
    List<String> all = new ArrayList<>();
    JOINTS.forEach(j -> all.add(j.word() + " flexion (°)"));
    all.add("view (°)");
    JOINTS.forEach(j -> all.add(j.word() + " moment (N·m)"));
    all.add(OFFERED);
    return all;
  }

  /** Median and worst of many photos. */
  record Summary(List<Recovered> photos) {

    static Summary of(List<Recovered> all, Predicate<Recovered> which) {
      return new Summary(all.stream().filter(which).toList());
    }

    private List<Recovered> known(String quantity) {
      return photos.stream().filter(f -> f.errors().containsKey(quantity)).toList();
    }

    int count(String quantity) {
      return known(quantity).size();
    }

    double median(String quantity) {
      double[] sorted =
          known(quantity).stream().mapToDouble(f -> f.error(quantity)).sorted().toArray();
      return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }

    double worst(String quantity) {
      return worstOf(quantity).error(quantity);
    }

    private Recovered worstOf(String quantity) {
      return known(quantity).stream()
          .max(Comparator.comparingDouble(f -> f.error(quantity)))
          .orElseThrow();
    }

    /** The joint angle that is worst found. */
    double worstAngle() {
      return JOINTS.stream().mapToDouble(j -> worst(j.word() + " flexion (°)")).max().orElseThrow();
    }

    /** A line for each quantity. */
    String csv(String begin) {
      StringBuilder csv = new StringBuilder();
      for (String quantity : quantities()) {
        csv.append(begin)
            .append(
                String.format(
                    Locale.ROOT,
                    ",%s,%d,%.2f,%.2f,\"%s\"%n",
                    quantity,
                    count(quantity),
                    median(quantity),
                    worst(quantity),
                    worstOf(quantity).shot().name()));
      }
      return csv.toString();
    }
  }
}
