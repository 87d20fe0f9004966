package org.leverbook.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.leverbook.display.Caution;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Refused;
import tech.tablesaw.api.Table;

/**
 * Two quantities that pull against each other: the settings of a scan that no other beats in both
 * (the Pareto front), and one between the two ends.
 *
 * <p>The middle of the front is the setting whose two losses, each as a share of what the front
 * spans, have the smallest sum of squares (nearest to having both; common practice, no source). It
 * is one choice among many: the front is the answer.
 *
 * @param <T> what is looked at, mostly a position
 */
public final class TradeOff<T> implements Shown {

  private final Quest<T> quest;
  private final Quest.Named<T> second;
  private final int secondSign;
  private final List<Quest.Pair> scan;
  private final List<Quest.Pair> front;

  private TradeOff(Quest<T> quest, Quest.Named<T> second, int secondSign, List<Quest.Pair> scan) {
    this.quest = quest;
    this.second = second;
    this.secondSign = secondSign;
    this.scan = scan;
    this.front = front();
  }

  static <T> TradeOff<T> of(Quest<T> quest, Quest.Named<T> second, int sign) {
    if (second.name().equals(quest.quantity().name())) {
      throw new Refused(
          "Both quantities are called \""
              + second.name()
              + "\": name the first by .called(\"L5/S1 moment\", \"N·m\").");
    }
    Span<?> slow = quest.spans().get(0);
    int width = quest.two() ? quest.spans().get(1).values() : 1;
    List<Quest.Pair> scan = new ArrayList<>();
    Searches.each(
        "scan for " + quest.quantity().name() + " and " + second.name(),
        slow.values() * width,
        i ->
            quest.tried(
                slow.value(i / width),
                quest.two() ? quest.spans().get(1).value(i % width) : 0,
                second),
        (i, pair) -> scan.add(pair));
    Searches.someFree(
        scan.stream().map(Quest.Pair::trial).toList(), "settings of " + Optima.ends(quest));
    return new TradeOff<>(quest, second, sign, scan);
  }

  private double cost(Quest.Pair pair) {
    return secondSign * pair.other();
  }

  /** From the best of the first quantity to the best of the second. */
  private List<Quest.Pair> front() {
    List<Quest.Pair> free = new ArrayList<>(scan.stream().filter(p -> p.trial().free()).toList());
    Comparator<Quest.Pair> order = Comparator.comparingDouble(p -> p.trial().cost());
    free.sort(order.thenComparingDouble(this::cost));
    List<Quest.Pair> kept = new ArrayList<>();
    for (Quest.Pair pair : free) {
      if (kept.isEmpty() || cost(pair) < cost(kept.get(kept.size() - 1))) {
        kept.add(pair);
      }
    }
    return List.copyOf(kept);
  }

  private Quest.Pair middle() {
    Quest.Pair one = front.get(0);
    Quest.Pair other = front.get(front.size() - 1);
    double span = other.trial().cost() - one.trial().cost();
    double across = cost(one) - cost(other);
    if (span == 0 || across == 0) {
      return one;
    }
    return front.stream()
        .min(
            Comparator.comparingDouble(
                p ->
                    Math.pow((p.trial().cost() - one.trial().cost()) / span, 2)
                        + Math.pow((cost(p) - cost(other)) / across, 2)))
        .orElseThrow();
  }

  /**
   * The setting of the front in the middle.
   *
   * @return the position, or whatever the lambda gives
   */
  public T inTheMiddle() {
    return quest.make(middle().trial().x(), middle().trial().y());
  }

  /**
   * The settings that no other beats in both, from the best of the first quantity to the best of
   * the second.
   *
   * @return a row for each
   */
  public Sheet sheet() {
    return sheet(front).about(this);
  }

  /**
   * The whole scan, with the front marked.
   *
   * @return a row for each setting, with its reason where it gave nothing
   */
  public Sheet scanSheet() {
    return sheet(scan).about(this);
  }

  private Sheet sheet(List<Quest.Pair> pairs) {
    List<Column> columns = new ArrayList<>(Optima.settings(quest));
    columns.add(new Column(quest.quantity().name(), quest.quantity().unit(), 1));
    columns.add(new Column(second.name(), second.unit(), 1));
    columns.add(Column.text("place"));
    columns.add(Column.text("reason"));
    Quest.Pair middle = middle();
    List<List<Object>> rows = new ArrayList<>();
    for (Quest.Pair pair : pairs) {
      Trial trial = pair.trial();
      List<Object> row = new ArrayList<>();
      row.add(trial.x());
      if (quest.two()) {
        row.add(trial.y());
      }
      row.add(trial.free() ? quest.value(trial) : null);
      row.add(trial.free() ? pair.other() : null);
      row.add(pair == middle ? "middle" : front.contains(pair) ? "front" : "");
      row.add(trial.reason());
      rows.add(row);
    }
    return new Sheet(title(), columns, rows, List.of(howMany(), Caution.TEXT));
  }

  private String title() {
    return String.format(
        Locale.ROOT,
        "%s %s against %s %s",
        quest.sign() > 0 ? "Low" : "High",
        quest.quantity().name(),
        secondSign > 0 ? "low" : "high",
        second.name());
  }

  private String howMany() {
    long free = scan.stream().filter(p -> p.trial().free()).count();
    return String.format(
        Locale.ROOT,
        "Of %,d settings over %s, %,d could be done, and %,d of them are beaten by no other in both.",
        scan.size(),
        Optima.ends(quest),
        free,
        front.size());
  }

  /**
   * The front as a Tablesaw table.
   *
   * @return units in the column names
   */
  public Table table() {
    return Tables.of(sheet());
  }

  /**
   * One quantity against the other, the front drawn through.
   *
   * @return the plot
   */
  public Picture plot() {
    return Illustrator.pictureOf(this, List.of());
  }

  /**
   * Saves the front with its caution.
   *
   * @param file a name that ends in {@code .csv} or {@code .json}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public Saved save(String file) {
    return sheet().save(file);
  }

  private String told(String which, Quest.Pair pair) {
    return String.format(
        Locale.ROOT,
        "%s: %s; %s %s, %s %s\n",
        which,
        Optima.place(quest, pair.trial()),
        quest.quantity().name(),
        quest.quantity().text(quest.value(pair.trial())),
        second.name(),
        second.text(pair.other()));
  }

  @Override
  public String text() {
    StringBuilder text = new StringBuilder(title()).append('\n');
    text.append(howMany()).append('\n');
    Quest.Pair last = front.get(front.size() - 1);
    if (front.size() == 1) {
      text.append("The two do not pull against each other: one setting is best in both.\n");
      text.append(told("best", last));
    } else {
      text.append(told("best of the first", front.get(0)));
      text.append(told("in the middle", middle()));
      text.append(told("best of the second", last));
    }
    quest.limits().forEach(limit -> text.append("Limit: ").append(limit.sentence()).append(".\n"));
    List<Trial> trials = scan.stream().map(Quest.Pair::trial).toList();
    Optima.missing(quest, trials).forEach(note -> text.append(note).append('\n'));
    text.append("sheet() has the whole front; plot() draws it; inTheMiddle() is that position\n");
    return text.append(Caution.TEXT).toString();
  }

  @Override
  public String toString() {
    return text();
  }
}
