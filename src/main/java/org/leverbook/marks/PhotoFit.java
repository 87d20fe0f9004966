package org.leverbook.marks;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.leverbook.body.Body;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.pose.Camera;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/** Fits one photo: camera, person, pose, and every pose that the marks leave open. */
final class PhotoFit {

  /** Where the search begins on either side of square on, radians. */
  private static final double TURNED = Math.toRadians(25);

  private static final Set<Landmark> NEEDED =
      EnumSet.of(Landmark.HIP, Landmark.KNEE, Landmark.ANKLE, Landmark.SHOULDER, Landmark.ELBOW);

  private PhotoFit() {}

  static Fit of(Photo photo, Person given) {
    Side shown = shown(photo);
    List<Mark> marks = photo.marks().stream().map(m -> m.near(shown)).toList();
    complete(marks, shown);
    double scale = scale(photo, marks, given);
    Person lifter = photo.measuring() ? measured(marks, scale, given) : given;
    Body body = lifter.body();
    Camera camera = photo.view.camera(scale, photo.still().width(), photo.still().height());
    List<Sighting> sightings =
        marks.stream().map(m -> Sighting.of(m, camera.sight(m.pixel()))).toList();
    MarkFit fit =
        new MarkFit(
            body, sightings, sided(photo.known, shown), camera.frame().z(), View.facing(shown));
    List<Solved> all =
        fit.every(TURNED, -TURNED).stream()
            .map(answer -> new Solved(photo, marks, shown, body, camera, answer, fit))
            .toList();
    return Fit.of(all);
  }

  /** Marks without side in what is nearer are of the side shown. */
  private static Known sided(Known known, Side shown) {
    List<Known.Pair> pairs =
        known.nearer().stream()
            .map(
                p ->
                    new Known.Pair(
                        p.one(),
                        near(p.one(), p.oneSide(), shown),
                        p.other(),
                        near(p.other(), p.otherSide(), shown)))
            .toList();
    return known.nearer(pairs);
  }

  private static Side near(Landmark landmark, Side side, Side shown) {
    return landmark.paired() && side == Side.MIDLINE ? shown : side;
  }

  /** By the foot: toes to the right of the heel are those of a lifter seen from the right. */
  private static Side shown(Photo photo) {
    if (photo.view.shown() != Side.MIDLINE) {
      return photo.view.shown();
    }
    Optional<Mark> toe = named(photo.marks(), Landmark.TOE);
    Optional<Mark> rear =
        named(photo.marks(), Landmark.HEEL).or(() -> named(photo.marks(), Landmark.ANKLE));
    if (toe.isEmpty() || rear.isEmpty()) {
      throw new Refused(
          "Which side of the lifter does the photo show? Mark heel and toe, or add"
              + " .seenFrom(RIGHT).");
    }
    return toe.get().pixel().getX() >= rear.get().pixel().getX() ? Side.RIGHT : Side.LEFT;
  }

  private static Optional<Mark> named(List<Mark> marks, Landmark landmark) {
    return marks.stream().filter(m -> m.landmark() == landmark).findFirst();
  }

  private static Optional<Mark> of(List<Mark> marks, Landmark landmark, Side side) {
    return marks.stream().filter(m -> m.landmark() == landmark && m.side() == side).findFirst();
  }

  private static void complete(List<Mark> marks, Side shown) {
    List<String> missing = new ArrayList<>();
    for (Landmark landmark : NEEDED) {
      if (of(marks, landmark, shown).isEmpty()) {
        missing.add(landmark.word());
      }
    }
    boolean end =
        of(marks, Landmark.WRIST, shown).isPresent() || of(marks, Landmark.HAND, shown).isPresent();
    if (!end) {
      missing.add("wrist or hand");
    }
    if (!missing.isEmpty()) {
      throw new Refused(
          "Of the "
              + shown.word()
              + " side these marks are missing: "
              + String.join(", ", missing)
              + ". A limb without them could be anywhere; add for example .mark(\""
              + missing.get(0).replace("wrist or hand", "hand")
              + "\", x, y).");
    }
  }

  private static double scale(Photo photo, List<Mark> marks, Person lifter) {
    View view = photo.view;
    if (view.perMetre().isPresent()) {
      return view.perMetre().get();
    }
    if (view.by().isEmpty()) {
      throw new Refused(
          "The photo has no scale yet. Give two points and their true distance, as in .scale(412,"
              + " 655, 412, 430, cm(45)), or a part of the lifter that lies square to the view, as"
              + " in .scale(SHANK).");
    }
    Stretch stretch = Stretch.of(view.by().get()).orElseThrow();
    return seenPixels(stretch, marks)
            .orElseThrow(
                () ->
                    new Refused(
                        "The scale is to be that of the "
                            + stretch.word()
                            + ", but its ends are not both marked: mark the joint at each end of it."))
        / stretch.length(lifter.body().links());
  }

  private static Optional<Double> seenPixels(Stretch stretch, List<Mark> marks) {
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Optional<Mark> from = of(marks, stretch.from, side);
      Optional<Mark> to = of(marks, stretch.to, side);
      if (from.isPresent() && to.isPresent()) {
        return Optional.of(from.get().pixel().distance(to.get().pixel()));
      }
    }
    return Optional.empty();
  }

  private static Person measured(List<Mark> marks, double scale, Person lifter) {
    Person measured = lifter.statureFollows();
    for (Stretch stretch : Stretch.values()) {
      Optional<Double> pixels = seenPixels(stretch, marks);
      if (pixels.isPresent()) {
        measured = measured.measured(stretch.part, Units.m(pixels.get() / scale));
      }
    }
    return measured;
  }

  /** A sentence of lengths, as measured. */
  static String lengths(Person lifter) {
    return lifter.changes().keySet().stream()
        .map(
            p ->
                String.format(
                    Locale.ROOT, "%s %.1f cm", p.word(), 100 * lifter.body().links().lengthOf(p)))
        .collect(Collectors.joining(", "));
  }
}
