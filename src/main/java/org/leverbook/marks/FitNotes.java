package org.leverbook.marks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.pose.Pose;

/** What a fit says of itself: view, other solutions, short parts, marks that miss. */
final class FitNotes {

  /** A mark that misses by more is told of, metres. */
  private static final double FAR_OFF = 0.04;

  /** Views turned by less are as good as square on, radians. */
  private static final double SQUARE = Math.toRadians(3);

  /** Parts turned out by less, and angles that differ by less, are not worth a word, radians. */
  private static final double WORTH_A_WORD = Math.toRadians(10);

  /** Sums that differ by less fit as well. */
  private static final double AS_WELL = 9;

  private static final int DIFFERENCES = 3;

  private final Fit fit;
  private final Solved solved;
  private final Optional<Mirrored> mirror;
  private final List<Solved> likely;

  FitNotes(Fit fit, Solved solved, Optional<Mirrored> mirror, List<Solved> likely) {
    this.fit = fit;
    this.solved = solved;
    this.mirror = mirror;
    this.likely = List.copyOf(likely);
  }

  /** As in "square on". */
  String view() {
    double angle = Math.abs(solved.turned());
    return angle < SQUARE
        ? "square on"
        : "not square on: the lifter is turned " + turned(solved.turned());
  }

  private static String turned(double radians) {
    return String.format(
        Locale.ROOT,
        "%.0f° %s the camera",
        Math.toDegrees(Math.abs(radians)),
        radians > 0 ? "towards" : "away from");
  }

  List<String> all() {
    List<String> notes = new ArrayList<>();
    notes.add("The view is " + view() + ". Everything is computed in space.");
    untold().ifPresent(notes::add);
    for (int i = 0; i < likely.size(); i++) {
      notes.add(open(likely.get(i), i + 1));
    }
    mirror.ifPresent(m -> notes.add(mirrored(m)));
    fit.foreshortened().stream()
        .filter(f -> f.tilt() > WORTH_A_WORD || f.seen() > 1.05 * f.length())
        .forEach(f -> notes.add("The " + f + "."));
    fit.marks().forEach(mark -> missing(mark, notes));
    if (solved.photo().measuring()) {
      notes.add("Lengths taken from the marks: " + PhotoFit.lengths(fit.body().person()) + ".");
    }
    if (solved.marks().stream().map(Mark::side).filter(s -> s != Side.MIDLINE).distinct().count()
        == 1) {
      notes.add("Only the near side is marked; the far side mirrors it.");
    }
    return notes;
  }

  /** What one view hardly tells and the coach did not either. */
  private Optional<String> untold() {
    Known known = solved.photo().known;
    List<String> words = new ArrayList<>();
    if (known.standing() && known.stanceWidth().isEmpty()) {
      words.add(".stanceWidth");
    }
    if (known.standing() && known.turnOut().isEmpty()) {
      words.add(".turnOut");
    }
    if (known.gripWidth().isEmpty() && known.hands() == Known.Hands.UNSAID) {
      words.add(".gripWidth or .handsApart");
    }
    return words.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "One view hardly shows what lies across it, so usual values were taken for what was not"
                + " told: "
                + String.join(", ", words)
                + ". A wide stance or grip must be told.");
  }

  private void missing(Mark mark, List<String> notes) {
    double miss = fit.miss(mark);
    if (miss > FAR_OFF) {
      notes.add(
          String.format(
              Locale.ROOT,
              "The mark of the %s is %.0f cm from where this lifter's can be: check the mark, the"
                  + " scale and the lifter's lengths%s.",
              mark.name(),
              100 * miss,
              ends()));
    }
  }

  private String ends() {
    List<String> ends = solved.fit().ends(solved.answer());
    return ends.isEmpty() ? "" : "; at the end of their range: " + String.join(", ", ends);
  }

  /** Another pose that fits about as well: where it differs, and how to go on with it. */
  private String open(Solved other, int index) {
    boolean better = other.cost() < solved.cost() - AS_WELL;
    return String.format(
        Locale.ROOT,
        "The marks %s with %s: .solutions().get(%d) gives that pose.",
        better ? "fit better" : "fit about as well",
        differences(other),
        index);
  }

  private record Difference(String name, double here, double there) {

    double size() {
      return Math.abs(there - here);
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "%s %.0f° instead of %.0f°",
          name,
          Math.toDegrees(there),
          Math.toDegrees(here));
    }
  }

  private String differences(Solved other) {
    List<Difference> all = new ArrayList<>();
    Pose here = solved.answer().pose();
    Pose there = other.answer().pose();
    for (JointId joint : List.of(JointId.HIP, JointId.KNEE, JointId.SHOULDER, JointId.ELBOW)) {
      for (String axis : List.of("flexion", "abduction")) {
        if (joint == JointId.HIP || joint == JointId.SHOULDER || axis.equals("flexion")) {
          all.add(
              new Difference(
                  joint.on(solved.shown()) + " " + axis,
                  here.angle(joint, solved.shown(), axis),
                  there.angle(joint, solved.shown(), axis)));
        }
      }
    }
    all.sort(Comparator.comparingDouble(d -> -d.size()));
    String angles =
        all.stream()
            .limit(DIFFERENCES)
            .filter(d -> d == all.get(0) || d.size() > WORTH_A_WORD / 2)
            .map(Difference::toString)
            .collect(Collectors.joining(", "));
    return angles + ", and the lifter turned " + turned(other.turned());
  }

  private String mirrored(Mirrored m) {
    double worse = m.solved().cost() - solved.cost();
    String fits =
        Math.abs(worse) < AS_WELL
            ? "fits the marks about as well"
            : worse > 0 ? "asks for a less usual posture or fits the marks worse" : "fits better";
    String stayed =
        m.stayed().isEmpty()
            ? ""
            : " Joints and stance do not let these turn the other way: "
                + String.join(", ", m.stayed())
                + ".";
    return "The mirror solution, .other(), with the lifter turned "
        + turned(m.solved().turned())
        + ", "
        + fits
        + "."
        + stayed;
  }
}
