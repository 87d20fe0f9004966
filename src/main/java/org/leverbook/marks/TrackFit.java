package org.leverbook.marks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.solve.Answer;

/**
 * Fits a lift over time: gaps filled, places smoothed; a few frames fitted freely tell which way
 * the lifter stands and where the feet are; then every frame in turn, begun at the one before.
 */
final class TrackFit {

  /** No landmark of a lifter moves faster, m/s: an assumption, twice a fast swing. */
  private static final double FASTEST = 15;

  /** What the landmarks hardly show is smoothed this much more. */
  private static final double SLOWER = 3;

  /** How far what they hardly show may be from its own slow course, radians. */
  private static final double SLOW_SPREAD = Math.toRadians(0.3);

  private static final double TURNED = Math.toRadians(20);
  private static final int SAMPLES = 7;
  private static final List<Landmark> NEEDED =
      List.of(Landmark.HIP, Landmark.KNEE, Landmark.ANKLE, Landmark.SHOULDER, Landmark.ELBOW);

  private final String name;
  private final List<Track> tracks;
  private final Track.Clock clock;
  private final Landmarks.Plan plan;
  private final LowPass filter;
  private final LowPass slow;
  private final Side shown;
  private final Body body;
  private final Frame attitude;
  private final List<String> notes = new ArrayList<>();

  TrackFit(
      String name,
      List<Track> read,
      Track.Clock whole,
      UpAxis up,
      Landmarks.Plan plan,
      Person lifter) {
    this.name = name;
    this.plan = plan;
    int frames = read.get(0).frames();
    int first = (int) Math.max(0, Math.ceil((plan.from() - whole.start()) / whole.step() - 1e-6));
    int last =
        (int) Math.min(frames - 1, Math.floor((plan.to() - whole.start()) / whole.step() + 1e-6));
    if (last - first < 3) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "%s runs from %.2f to %.2f s, a frame every %.3f s; the part asked for holds fewer than"
                  + " four frames. Ask for a longer part of it.",
              name,
              whole.start(),
              whole.at(frames - 1),
              whole.step()));
    }
    clock = new Track.Clock(whole.at(first), whole.step());
    for (Track track : read) {
      track.checkJumps(name, whole.step(), FASTEST);
    }
    int most = (int) Math.floor(plan.gap() / whole.step() + 1e-6);
    List<Track> filled =
        read.stream().map(t -> t.between(first, last).filled(most, name, clock)).toList();
    Residuals residuals = new Residuals(filled, 1 / whole.step());
    double hertz = plan.hertz().orElseGet(() -> residuals.hertz(notes));
    filter = new LowPass(hertz, 1 / whole.step());
    slow = new LowPass(hertz / SLOWER, 1 / whole.step());
    List<Track> smooth = filled.stream().map(t -> t.smoothed(filter)).toList();
    shown = shown(smooth);
    tracks = smooth.stream().map(t -> TrackTable.sided(t, shown)).toList();
    complete();
    if (plan.known().standing()) {
      up.check(name, tracks);
    }
    Person person = plan.measuring() ? measured(lifter) : lifter;
    body = person.body();
    attitude = attitude();
    notes.add(
        String.format(
            Locale.ROOT,
            "Places, then fitted angles, smoothed with a zero-lag fourth-order Butterworth"
                + " low-pass at"
                + " %.1f Hz, two passes, the cut-off corrected for them (Winter 2009); gaps up to %.2f s filled"
                + " along a straight line.",
            hertz,
            most * whole.step()));
  }

  private Side shown(List<Track> all) {
    if (plan.shown() != Side.MIDLINE) {
      return plan.shown();
    }
    Optional<Track> toe = any(all, Landmark.TOE);
    Optional<Track> rear = any(all, Landmark.HEEL).or(() -> any(all, Landmark.ANKLE));
    boolean inSpace = all.get(0).places().length == 3;
    if (inSpace || toe.isPresent() && rear.isPresent()) {
      return inSpace || toe.get().places()[0][0] >= rear.get().places()[0][0]
          ? Side.RIGHT
          : Side.LEFT;
    }
    throw new Refused(
        name
            + " does not tell which side of the lifter is seen. Mark heel and toe, or add"
            + " .seenFrom(RIGHT).");
  }

  private static Optional<Track> any(List<Track> all, Landmark landmark) {
    return all.stream().filter(t -> t.landmark() == landmark).findFirst();
  }

  private Optional<Track> of(Landmark landmark, Side side) {
    return tracks.stream().filter(t -> t.landmark() == landmark && t.side() == side).findFirst();
  }

  private void complete() {
    List<String> missing = new ArrayList<>();
    Set<Side> sides = new LinkedHashSet<>();
    tracks.stream().map(Track::side).filter(s -> s != Side.MIDLINE).forEach(sides::add);
    for (Side side : sides) {
      NEEDED.stream()
          .filter(l -> of(l, side).isEmpty())
          .forEach(l -> missing.add(side.of(l.word())));
      if (of(Landmark.WRIST, side).isEmpty() && of(Landmark.HAND, side).isEmpty()) {
        missing.add(side.of("wrist or hand"));
      }
    }
    if (!missing.isEmpty() || sides.isEmpty()) {
      throw new Refused(
          name
              + ", column landmark: there are no rows for "
              + String.join(", ", missing)
              + ". A limb without them could be anywhere; mark them, or leave the whole far side"
              + " out so that it mirrors the near one.");
    }
  }

  private Frame attitude() {
    if (tracks.get(0).places().length == 2) {
      return View.facing(shown);
    }
    Optional<Track> right = of(Landmark.HIP, Side.RIGHT);
    Optional<Track> left = of(Landmark.HIP, Side.LEFT);
    Vector3D across =
        right.isPresent() && left.isPresent()
            ? place(right.get(), 0).subtract(place(left.get(), 0))
            : Vector3D.PLUS_K;
    return Frame.aboutVertical(Math.atan2(across.getX(), across.getZ()));
  }

  private static Vector3D place(Track track, int frame) {
    double[][] p = track.places();
    return new Vector3D(p[0][frame], p[1][frame], p.length > 2 ? p[2][frame] : 0);
  }

  private Person measured(Person lifter) {
    Person measured = lifter.statureFollows();
    for (Stretch stretch : Stretch.values()) {
      for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
        Optional<Track> from = of(stretch.from, side);
        Optional<Track> to = of(stretch.to, side);
        if (from.isPresent() && to.isPresent()) {
          double[] lengths = new double[from.get().frames()];
          for (int i = 0; i < lengths.length; i++) {
            lengths[i] = place(from.get(), i).distance(place(to.get(), i));
          }
          Arrays.sort(lengths);
          boolean inSpace = from.get().places().length == 3;
          // In a view from the side a part looks its full length when it lies in the picture.
          int rank = inSpace ? lengths.length / 2 : (int) (0.95 * (lengths.length - 1));
          measured = measured.measured(stretch.part, Units.m(lengths[rank]));
        }
      }
    }
    notes.add("Lengths taken from the landmarks: " + PhotoFit.lengths(measured) + ".");
    return measured;
  }

  private List<Sighting> sightings(int frame) {
    return tracks.stream()
        .map(
            t ->
                t.places().length == 3
                    ? Sighting.at(t.landmark(), t.side(), place(t, frame))
                    : new Sighting(
                        t.landmark(),
                        t.side(),
                        List.of(Vector3D.PLUS_I, Vector3D.PLUS_J),
                        List.of(t.places()[0][frame], t.places()[1][frame])))
        .toList();
  }

  private MarkFit fit(int frame, Known known) {
    return new MarkFit(body, sightings(frame), known, Vector3D.PLUS_K, attitude);
  }

  Recorded recorded() {
    int frames = tracks.get(0).frames();
    List<Answer> free = free(frames);
    Vector3D right = heading(free);
    Known known = plan.known().planted(plan.known().standing() ? ankles(free) : Map.of(), right);
    List<Answer> each = new ArrayList<>();
    for (int i = 0; i < frames; i++) {
      MarkFit fit = fit(i, known);
      each.add(i == 0 ? fit.best(TURNED * sign(right)) : fit.refined(each.get(i - 1)));
    }
    each = steadied(each, known);
    List<Pose> poses = smooth(each, known);
    double worst = 0;
    String worstMark = "";
    for (int i = 0; i < frames; i++) {
      MarkFit fit = fit(i, known);
      Placement where = poses.get(i).placed();
      for (Sighting s : fit.sightings()) {
        double miss = s.miss(fit.place(s, where));
        if (miss > worst) {
          worst = miss;
          worstMark = String.format(Locale.ROOT, "%s at %.2f s", s.name(), clock.at(i));
        }
      }
    }
    notes.add(
        String.format(
            Locale.ROOT, "Largest miss of a landmark: %.1f cm (%s).", 100 * worst, worstMark));
    return new Recorded(name, body, level(poses, right), clock, plan.known().standing(), notes);
  }

  /**
   * The same fitted again, what the landmarks hardly show kept near a slow course of its own. A
   * part that lies nearly in the picture changes its length there by the cosine of how far it is
   * turned out: a millimetre of trembling, 2 mm in 1000, makes 3.6°, and the turning's acceleration
   * would count as force.
   */
  private List<Answer> steadied(List<Answer> each, Known known) {
    List<String> hardlySeen = hardlySeen();
    double[][] rows = new double[hardlySeen.size()][];
    for (int k = 0; k < rows.length; k++) {
      int index = fit(0, known).indexOf(hardlySeen.get(k));
      rows[k] = slow.smooth(each.stream().mapToDouble(a -> a.values()[index]).toArray());
    }
    List<Answer> steady = new ArrayList<>();
    for (int i = 0; i < each.size(); i++) {
      int frame = i;
      steady.add(
          fit(i, known)
              .refined(
                  said -> {
                    for (int k = 0; k < rows.length; k++) {
                      said.usually(hardlySeen.get(k), rows[k][frame], MarkFit.WEIGHT / SLOW_SPREAD);
                    }
                  },
                  each.get(i)));
    }
    return steady;
  }

  private List<String> hardlySeen() {
    boolean inSpace = tracks.get(0).places().length == 3;
    boolean spine =
        any(tracks, Landmark.LOW_BACK).isPresent() || any(tracks, Landmark.NECK).isPresent();
    return fit(0, plan.known()).names().stream()
        .filter(n -> Usual.hardlySeen(n, inSpace, spine))
        .toList();
  }

  /**
   * The fitted angles smoothed as the places were: what the marks leave open (how far a limb is
   * turned out of the picture) would tremble otherwise. Feet stay where they are.
   */
  private List<Pose> smooth(List<Answer> each, Known known) {
    int count = each.get(0).values().length;
    double[][] rows = new double[count][each.size()];
    for (int i = 0; i < each.size(); i++) {
      double[] values = each.get(i).values();
      for (int k = 0; k < count; k++) {
        rows[k][i] = values[k];
      }
    }
    for (int k = 0; k < count; k++) {
      rows[k] = filter.smooth(rows[k]);
    }
    List<Pose> poses = new ArrayList<>();
    for (int i = 0; i < each.size(); i++) {
      double[] values = new double[count];
      for (int k = 0; k < count; k++) {
        values[k] = rows[k][i];
      }
      poses.add(fit(i, known).kept(values, each.get(i)).pose());
    }
    return poses;
  }

  /** On which side of square on the first search begins. */
  private double sign(Vector3D right) {
    return Math.signum(attitude.toLocal(right).getX() + 1e-12);
  }

  /** Some frames, each by itself; of the two turns from square on the one that suits them all. */
  private List<Answer> free(int frames) {
    List<Answer> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (double turned : new double[] {TURNED, -TURNED}) {
      List<Answer> answers = new ArrayList<>();
      double sum = 0;
      for (int k = 0; k < SAMPLES; k++) {
        MarkFit fit = fit((int) Math.round(k * (frames - 1) / (SAMPLES - 1.0)), plan.known());
        Answer answer = fit.best(turned);
        sum += fit.cost(answer);
        answers.add(answer);
      }
      if (sum < least) {
        least = sum;
        best = answers;
      }
    }
    return best;
  }

  private static Vector3D heading(List<Answer> free) {
    Vector3D sum = Vector3D.ZERO;
    for (Answer answer : free) {
      Vector3D z = answer.pose().rootFrame().z();
      sum = sum.add(new Vector3D(z.getX(), 0, z.getZ()).normalize());
    }
    return sum.normalize();
  }

  private static Map<Side, Vector3D> ankles(List<Answer> free) {
    Map<Side, Vector3D> ankles = new EnumMap<>(Side.class);
    double height = 0;
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Vector3D sum = Vector3D.ZERO;
      for (Answer answer : free) {
        sum = sum.add(answer.pose().placed().centre(JointId.ANKLE.on(side)));
      }
      ankles.put(side, sum.scalarMultiply(1.0 / free.size()));
      height += ankles.get(side).getY() / 2;
    }
    double level = height;
    ankles.replaceAll((s, v) -> new Vector3D(v.getX(), level, v.getZ()));
    return ankles;
  }

  /** All poses turned alike, facing x, the first one's lowest sole on the floor. */
  private List<Pose> level(List<Pose> poses, Vector3D right) {
    double heading = Math.atan2(right.getX(), right.getZ());
    Frame turn = Frame.aboutVertical(-heading);
    double off = Math.toDegrees(Math.asin(attitude.toLocal(right).getX()));
    if (tracks.get(0).places().length == 2) {
      notes.add(
          String.format(
              Locale.ROOT,
              "The view is %.0f° from square on, as far as the landmarks tell; everything is"
                  + " computed in space.",
              Math.abs(off)));
    }
    List<Pose> turned =
        poses.stream()
            .map(p -> p.rootAt(turn.toWorld(p.rootPlace()), turn.turning(p.rootFrame())))
            .toList();
    Placement first = turned.get(0).placed();
    double lowest =
        body.soles().stream()
            .mapToDouble(s -> first.toWorld(s.segment(), s.place()).getY())
            .min()
            .orElseThrow();
    Vector3D r = first.at(body.place(Site.FOOT, Side.RIGHT));
    Vector3D l = first.at(body.place(Site.FOOT, Side.LEFT));
    Vector3D shift = new Vector3D(-(r.getX() + l.getX()) / 2, -lowest, -(r.getZ() + l.getZ()) / 2);
    return turned.stream().map(p -> p.rootAt(p.rootPlace().add(shift), p.rootFrame())).toList();
  }
}
