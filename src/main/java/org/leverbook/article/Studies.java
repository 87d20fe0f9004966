package org.leverbook.article;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leverbook.lift.Lift;
import org.leverbook.marks.Fit;
import org.leverbook.marks.Recorded;
import org.leverbook.statics.Movement;
import org.leverbook.study.Cells;
import org.leverbook.study.Claim;
import org.leverbook.study.ClaimAnswer;
import org.leverbook.study.Comparison;
import org.leverbook.study.Doubt;
import org.leverbook.study.DoubtBand;
import org.leverbook.study.Group;
import org.leverbook.study.Optimum;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;
import org.leverbook.study.TradeOff;
import org.leverbook.study.WayComparison;

/** What was asked of many positions, each question in a sentence of the method. */
final class Studies {

  private static final int REASONS = 3;

  private Studies() {}

  static String sentence(Object study) {
    if (study instanceof Sweep sweep) {
      return sweep(sweep);
    }
    if (study instanceof Cells cells) {
      return String.format(
          Locale.ROOT,
          "A grid of %,d positions, of which %,d could be held.",
          cells.cells().size(),
          cells.held());
    }
    if (study instanceof Comparison comparison) {
      String names =
          comparison.rows().stream()
              .map(Comparison.Row::name)
              .collect(Collectors.joining("\", \"", "\"", "\""));
      return "Side by side: " + names + ", " + comparison.loads() + ".";
    }
    if (study instanceof WayComparison ways) {
      String names =
          ways.tracks().stream()
              .map(t -> t.name())
              .collect(Collectors.joining("\", \"", "\"", "\""));
      return "Over the whole way, side by side: " + names + ", " + ways.loads() + ".";
    }
    if (study instanceof Lift<?> lift) {
      String settings = lift.settings();
      return Method.capital(lift.name())
          + ": usual posture "
          + lift.source()
          + (settings.isEmpty() ? "." : "; set to " + settings + ".");
    }
    if (study instanceof Movement movement) {
      return "Movement " + movement.text().lines().findFirst().orElseThrow() + ".";
    }
    return ofPeople(study);
  }

  private static String ofPeople(Object study) {
    if (study instanceof Group group) {
      return Method.capital(group.title()) + ". " + String.join(" ", group.notes());
    }
    if (study instanceof Claim claim) {
      return "Claim: " + claim.words() + ".";
    }
    if (study instanceof ClaimAnswer answer) {
      return String.format(
          Locale.ROOT,
          "Claim \"%s\": tested on %,d people in %,d cases, of which %,d could be tested.",
          answer.words(),
          answer.people().size(),
          answer.cases(),
          answer.tested());
    }
    if (study instanceof Doubt doubt) {
      return doubt.table().title() + ": " + doubt.table().notes().get(0);
    }
    if (study instanceof DoubtBand band) {
      return Method.capital(band.what()) + ": 5 % to 95 % of " + band.notes().get(0);
    }
    return Method.capital(other(study));
  }

  /** Photos, recordings and searches, by what they say of themselves. */
  private static String other(Object study) {
    if (study instanceof Fit fit) {
      return "Posture from marks in the photo "
          + fit.photo().still().name()
          + ". "
          + String.join(" ", fit.notes());
    }
    if (study instanceof Recorded recorded) {
      return "Recording "
          + recorded.text().lines().findFirst().orElseThrow()
          + ". "
          + String.join(" ", recorded.notes());
    }
    if (study instanceof Optimum<?> optimum) {
      return "Search: "
          + optimum.text().lines().findFirst().orElseThrow()
          + ". "
          + optimum.notes().stream().filter(Studies::noCaution).collect(Collectors.joining(" "));
    }
    if (study instanceof TradeOff<?> trade) {
      return "Search: " + trade.text().lines().findFirst().orElseThrow() + ".";
    }
    return study.toString().lines().findFirst().orElse("");
  }

  private static boolean noCaution(String sentence) {
    return !sentence.equals(org.leverbook.display.Caution.TEXT);
  }

  private static String sweep(Sweep sweep) {
    List<SweepRow> rows = sweep.rows();
    String span =
        rows.isEmpty()
            ? "no values"
            : sweep.named()
                ? rows.size()
                    + " tried: "
                    + rows.stream().limit(8).map(SweepRow::name).collect(Collectors.joining(", "))
                    + (rows.size() > 8 ? ", …" : "")
                : String.format(
                    Locale.ROOT,
                    "%,d values from %s to %s",
                    rows.size(),
                    value(rows.get(0), sweep.unit()),
                    value(rows.get(rows.size() - 1), sweep.unit()));
    List<SweepRow> lost = rows.stream().filter(row -> !row.held()).toList();
    String held =
        lost.isEmpty()
            ? ", all of them held."
            : String.format(Locale.ROOT, ", of which %,d could be held.", sweep.held());
    String reasons =
        lost.stream()
            .map(SweepRow::reason)
            .distinct()
            .limit(REASONS)
            .collect(Collectors.joining(" "));
    return "Sweep "
        + sweep.title()
        + ": "
        + span
        + held
        + (reasons.isEmpty() ? "" : " Not held: " + reasons)
        + (sweep.notes().isEmpty() ? "" : " " + String.join(" ", sweep.notes()));
  }

  private static String value(SweepRow row, String unit) {
    String gap = unit.equals("°") || unit.isEmpty() ? "" : " ";
    return new java.math.BigDecimal(row.value())
            .round(new java.math.MathContext(6))
            .stripTrailingZeros()
            .toPlainString()
        + gap
        + unit;
  }
}
