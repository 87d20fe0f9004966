package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.quantity.Refused;

/** Several claims in one table. */
public final class ClaimSheet {

  private ClaimSheet() {}

  /**
   * A row for each answer: claim, cases, how many of them could be tested, per cent that hold, the
   * input that separates holders from exceptions, its rule and how well it does.
   *
   * @param answers in order
   * @return the table
   * @throws Refused if there is none
   */
  public static Sheet of(List<ClaimAnswer> answers) {
    if (answers.isEmpty()) {
      throw new Refused("There is no claim to tabulate: give some, as in claims(first, second).");
    }
    List<List<Object>> rows = new ArrayList<>();
    for (ClaimAnswer answer : answers) {
      ClaimSplit best = answer.splits().isEmpty() ? null : answer.splits().get(0);
      List<Object> row = new ArrayList<>();
      row.add(answer.words());
      row.add((double) answer.cases());
      row.add((double) answer.tested());
      row.add(answer.tested() == 0 ? null : 100 * answer.share());
      row.add(best == null ? "" : best.inputs());
      row.add(best == null ? "" : best.rule());
      row.add(best == null ? null : 100 * best.accuracy());
      row.add(best == null ? null : 100 * best.balanced());
      row.add(best == null ? null : 100 * best.base());
      rows.add(row);
    }
    return new Sheet(
            "Claims",
            List.of(
                Column.text("claim"),
                new Column("cases", "", 0),
                new Column("tested", "", 0),
                new Column("holds", "%", 1),
                Column.text("splitting input"),
                Column.text("rule"),
                new Column("accuracy", "%", 1),
                new Column("balanced accuracy", "%", 1),
                new Column("always saying what most do", "%", 1)),
            rows,
            List.of(
                "Holds: of the cases tested. Balanced accuracy: mean of the shares told rightly among"
                    + " holders and among exceptions; a rule that knows nothing gets 50 %.",
                Caution.TEXT))
        .about(answers.toArray());
  }
}
