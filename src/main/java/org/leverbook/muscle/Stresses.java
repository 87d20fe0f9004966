package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.leverbook.body.Body;
import org.leverbook.body.Side;

/** The stresses of trade groups along a way, with our numbers and with those of the draws. */
final class Stresses {

  /** Sides whose stress differs by less than this pull alike. */
  private static final double ALIKE = 0.01;

  /** The share of the draws that lies outside the band at each end. */
  private static final double OUTSIDE = 0.05;

  /** From this stress on a group is at its full pull. */
  private static final double FULL = 0.99;

  /** Where several are, all that is asked is taken back by this factor until none is. */
  private static final double BACK = 0.85;

  private static final double LEAST_PART = 0.05;

  private final List<Effort> way;
  private final Musculature muscles;
  private final LengthChange lengths;
  private final List<Part> parts = new ArrayList<>();
  private final Doubt ours;
  private final Outcome plain;
  private final Outcome[] drawn;

  /** The most stress of each part, and whether it gives out first. */
  private record Outcome(double[] most, boolean[] first) {

    VerdictWord word(int part, double turn) {
      return VerdictWord.of(most[part], first[part], turn);
    }
  }

  /** A trade group on one side. */
  private record Part(TradeGroup group, Side side, int[] strands) {}

  Stresses(Body body, List<Effort> way) {
    this.way = way;
    muscles = way.get(0).muscles();
    lengths = LengthChange.along(way);
    for (TradeGroup group : TradeGroup.ALL) {
      for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
        int[] strands = group.strands(muscles, side);
        if (strands.length > 0) {
          parts.add(new Part(group, side, strands));
        }
      }
    }
    ours = Doubt.none(muscles);
    plain = outcome(body, ours);
    drawn =
        Doubt.draws(muscles).stream()
            .parallel()
            .map(doubt -> outcome(body, doubt))
            .toArray(Outcome[]::new);
  }

  /** Stress by one draw, and which parts would be the first at their full pull. */
  private Outcome outcome(Body body, Doubt doubt) {
    double[] most = most(body, doubt, 1);
    double[] before = most;
    double part = 1;
    while (highest(before) >= FULL && part > LEAST_PART) {
      part *= BACK;
      before = most(body, doubt, part);
    }
    double near = VerdictWord.NEAR * highest(before);
    boolean[] first = new boolean[most.length];
    for (int k = 0; k < first.length; k++) {
      first[k] = before[k] >= near;
    }
    return new Outcome(most, first);
  }

  private static double highest(double[] of) {
    return Arrays.stream(of).max().orElse(0);
  }

  /** The most stress of every part on the way, where so much of all is asked. */
  private double[] most(Body body, Doubt doubt, double share) {
    double[] most = new double[parts.size()];
    for (Effort effort : way) {
      double[] stresses = effort.varied(body, doubt.gains(), share);
      for (int k = 0; k < most.length; k++) {
        most[k] = Math.max(most[k], mean(parts.get(k), stresses, doubt));
      }
    }
    return most;
  }

  /** Weighted by cross-section, which goes with the greatest pull. */
  private double mean(Part part, double[] stresses, Doubt doubt) {
    double sum = 0;
    double areas = 0;
    for (int i : part.strands()) {
      double area = muscles.strands().get(i).muscle().area() * doubt.force(i);
      sum += area * stresses[i];
      areas += area;
    }
    return sum / areas;
  }

  private double mean(Part part, Effort effort) {
    double[] stresses = new double[muscles.strands().size()];
    Arrays.setAll(stresses, effort::stress);
    return mean(part, stresses, ours);
  }

  /** The groups, hardest first. */
  List<GroupVerdict> verdicts() {
    double[] most = new double[parts.size()];
    for (int k = 0; k < most.length; k++) {
      most[k] = way.stream().mapToDouble(at(k)).max().orElse(0);
    }
    List<GroupVerdict> verdicts = new ArrayList<>();
    // A group's two sides stand beside each other.
    for (int k = 0; k < most.length; k += 2) {
      boolean alike = Math.abs(most[k] - most[k + 1]) < ALIKE;
      int harder = most[k + 1] > most[k] && !alike ? k + 1 : k;
      String side = alike ? "both" : parts.get(harder).side().word();
      verdicts.add(verdict(harder, side, most[harder]));
    }
    verdicts.sort(Comparator.comparingDouble(GroupVerdict::most).reversed());
    return verdicts;
  }

  private ToDoubleFunction<Effort> at(int part) {
    return effort -> mean(parts.get(part), effort);
  }

  private GroupVerdict verdict(int k, String side, double most) {
    Part part = parts.get(k);
    double least = way.stream().mapToDouble(at(k)).min().orElse(0);
    int where = 0;
    while (mean(part, way.get(where)) < most) {
      where++;
    }
    int longest = part.strands()[0];
    int hardest = part.strands()[0];
    double strandStress = 0;
    for (int i : part.strands()) {
      longest = lengths.of(i) > lengths.of(longest) ? i : longest;
      for (Effort effort : way) {
        if (effort.stress(i) > strandStress) {
          strandStress = effort.stress(i);
          hardest = i;
        }
      }
    }
    double turn = lengths.turn(longest);
    VerdictWord word = plain.word(k, turn);
    double same = Arrays.stream(drawn).filter(d -> d.word(k, turn) == word).count();
    double[] sorted = Arrays.stream(drawn).mapToDouble(d -> d.most()[k]).sorted().toArray();
    int outside = (int) Math.round(OUTSIDE * sorted.length);
    return new GroupVerdict(
        part.group().name(),
        side,
        word,
        most,
        least,
        way.size() > 1 ? (double) where / (way.size() - 1) : 0,
        Math.min(most, sorted[outside]),
        Math.max(most, sorted[sorted.length - 1 - outside]),
        muscles.strands().get(hardest).muscle().name(),
        strandStress,
        lengths.of(longest),
        turn,
        same / drawn.length);
  }
}
