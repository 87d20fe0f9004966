package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.leverbook.body.Body;
import org.leverbook.body.Side;

/** The stresses of trade groups along a way, with our numbers and with those of the draws. */
final class Stresses {

  /** Sides whose stress differs by less than this pull alike. */
  private static final double ALIKE = 0.01;

  /** The share of the draws that lies outside the band at each end. */
  private static final double OUTSIDE = 0.05;

  private final List<Effort> way;
  private final Musculature muscles;
  private final LengthChange lengths;
  private final List<Part> parts = new ArrayList<>();
  private final double[][] drawn;

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
    drawn =
        Doubt.draws(muscles).stream()
            .parallel()
            .map(doubt -> most(body, doubt))
            .toArray(double[][]::new);
  }

  /** The most stress of every part on the way, by one draw. */
  private double[] most(Body body, Doubt doubt) {
    double[] most = new double[parts.size()];
    for (Effort effort : way) {
      double[] stresses = effort.varied(body, doubt.gains());
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
      double area = muscles.strands().get(i).muscle().area() * (doubt == null ? 1 : doubt.force(i));
      sum += area * stresses[i];
      areas += area;
    }
    return sum / areas;
  }

  private double mean(Part part, Effort effort) {
    double[] stresses = new double[muscles.strands().size()];
    Arrays.setAll(stresses, effort::stress);
    return mean(part, stresses, null);
  }

  /** The groups, hardest first. */
  List<GroupVerdict> verdicts() {
    double[] most = new double[parts.size()];
    for (int k = 0; k < most.length; k++) {
      most[k] = way.stream().mapToDouble(at(k)).max().orElse(0);
    }
    double highest = Arrays.stream(most).max().orElse(0);
    double[] highestDrawn =
        Arrays.stream(drawn).mapToDouble(d -> Arrays.stream(d).max().orElse(0)).toArray();
    List<GroupVerdict> verdicts = new ArrayList<>();
    // A group's two sides stand beside each other.
    for (int k = 0; k < most.length; k += 2) {
      boolean alike = Math.abs(most[k] - most[k + 1]) < ALIKE;
      int harder = most[k + 1] > most[k] && !alike ? k + 1 : k;
      String side = alike ? "both" : parts.get(harder).side().word();
      verdicts.add(verdict(harder, side, most[harder], highest, highestDrawn));
    }
    verdicts.sort(Comparator.comparingDouble(GroupVerdict::most).reversed());
    return verdicts;
  }

  private java.util.function.ToDoubleFunction<Effort> at(int part) {
    return effort -> mean(parts.get(part), effort);
  }

  private GroupVerdict verdict(
      int k, String side, double most, double highest, double[] highestDrawn) {
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
    VerdictWord word = VerdictWord.of(most, highest, turn);
    int same = 0;
    for (int d = 0; d < drawn.length; d++) {
      same += VerdictWord.of(drawn[d][k], highestDrawn[d], turn) == word ? 1 : 0;
    }
    double[] sorted = Arrays.stream(drawn).mapToDouble(d -> d[k]).sorted().toArray();
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
        (double) same / drawn.length);
  }
}
