package org.leverbook.checks;

import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.leverbook.checks.Agreement.Line;
import org.leverbook.checks.Agreement.Outcome;
import org.leverbook.display.Caution;

/** The agreement with published work as a CSV file and as parts of the two pages. */
record AgreementPage(Agreement agreement) {

  private static final Map<String, String> KINDS = new LinkedHashMap<>();

  static {
    KINDS.put("exact", "worked examples and laws, to the digits printed");
    KINDS.put("fact", "sizes, masses and facts of the trade");
    KINDS.put("measured", "measured on people");
    KINDS.put("order", "orders and signs: which is larger, which way it acts");
  }

  /** One row a published row; answers in four digits, which no machine rounds differently. */
  String csv() {
    StringWriter text = new StringWriter();
    text.write(
        "# Published results beside Leverbook's answers. A row agrees within low to high.\n");
    text.write("# Sources stand in each row; status tells whether looked up or from memory.\n");
    text.write("# " + Caution.TEXT + "\n");
    CsvSchema.Builder columns = CsvSchema.builder();
    List.of(
            "id",
            "kind",
            "set-up",
            "quantity",
            "unit",
            "low",
            "high",
            "answer",
            "outcome",
            "source",
            "status",
            "note")
        .forEach(columns::addColumn);
    CsvSchema schema = columns.build().withHeader().withLineSeparator("\n");
    try (SequenceWriter out =
        new CsvMapper().writerFor(Object[].class).with(schema).writeValues(text)) {
      for (Line line : agreement.lines()) {
        PublishedRow row = line.row();
        out.write(
            new Object[] {
              row.id(),
              row.kind(),
              row.title(),
              row.quantity(),
              row.unit(),
              number(row.low()),
              number(row.high()),
              line.answer().isPresent() ? number(line.answer().getAsDouble()) : "",
              line.outcome().word(),
              row.source(),
              row.status(),
              line.note()
            });
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static String number(double value) {
    // What is left of a sum that is nought is noise, and differs from machine to machine.
    double told = Math.abs(value) < 1e-9 ? 0 : value;
    BigDecimal four = new BigDecimal(told).round(new MathContext(4));
    return four.signum() == 0 ? "0" : four.stripTrailingZeros().toPlainString();
  }

  /** The paragraph of the README. */
  String inShort() {
    int agree = agreement.with(Outcome.AGREES).size();
    int miss = agreement.with(Outcome.MISSES).size();
    long sources = compared().stream().map(line -> line.row().source()).distinct().count();
    return String.format(
        Locale.ROOT,
        """
        Of %d published results from %d sources, %d fall within the band that stands beside each in the file of cases and is never widened to pass, and %d miss:

        %s
        Each stands in [datasets/checks/agreement.csv](datasets/checks/agreement.csv) with its source, its band, Leverbook's answer, and what the set-up had to assume; those that miss, and %d more that are not compared, with the reason. Source by source: [DEVELOPERS.md](DEVELOPERS.md#agreement-with-published-work).
        """,
        agree + miss,
        sources,
        agree,
        miss,
        byKind(),
        agreement.with(Outcome.NOT_COMPARED).size());
  }

  private List<Line> compared() {
    return agreement.lines().stream().filter(line -> line.answer().isPresent()).toList();
  }

  private String byKind() {
    StringBuilder table = new StringBuilder("| what is compared | rows | agree | miss |\n");
    table.append("| --- | --- | --- | --- |\n");
    KINDS.forEach(
        (kind, words) -> {
          List<Line> rows =
              compared().stream().filter(line -> line.row().kind().equals(kind)).toList();
          table.append(
              row(words, rows.size(), count(rows, Outcome.AGREES), count(rows, Outcome.MISSES)));
        });
    return table.toString();
  }

  private static long count(List<Line> lines, Outcome outcome) {
    return lines.stream().filter(line -> line.outcome() == outcome).count();
  }

  private static String row(Object... cells) {
    List<String> texts = new ArrayList<>();
    for (Object cell : cells) {
      texts.add(cell.toString().replace("|", "\\|"));
    }
    return "| " + String.join(" | ", texts) + " |\n";
  }

  /** The section of the contributors' page. */
  String bySource() {
    StringBuilder page = new StringBuilder();
    page.append("| source | status | rows | agree | miss | not compared |\n");
    page.append("| --- | --- | --- | --- | --- | --- |\n");
    Map<String, List<Line>> bySource =
        agreement.lines().stream()
            .collect(
                Collectors.groupingBy(
                    line -> line.row().source(), LinkedHashMap::new, Collectors.toList()));
    bySource.forEach((source, lines) -> page.append(counted(source, statuses(lines), lines)));
    page.append(counted("all " + bySource.size() + " sources", "", agreement.lines()));
    page.append(
        "\nWhat misses:\n\n| row | what | band | answer | why |\n| --- | --- | --- | --- | --- |\n");
    for (Line line : agreement.with(Outcome.MISSES)) {
      PublishedRow row = line.row();
      page.append(
          row(
              row.id(),
              row.title() + ": " + row.quantity(),
              number(row.low()) + " to " + number(row.high()) + " " + unit(row),
              number(line.answer().orElseThrow()),
              line.note()));
    }
    page.append("\nWhat is not compared:\n\n| rows | how many | why |\n| --- | --- | --- |\n");
    agreement.with(Outcome.NOT_COMPARED).stream()
        .collect(Collectors.groupingBy(Line::note, LinkedHashMap::new, Collectors.toList()))
        .forEach((why, lines) -> page.append(row(cases(lines), lines.size(), why)));
    long taken =
        agreement.with(Outcome.AGREES).stream().filter(line -> !line.note().isEmpty()).count();
    page.append(
        String.format(
            Locale.ROOT,
            "%nOf the rows that agree, %d rest on something the source, as read, does not print; the"
                + " file says what was taken.%n",
            taken));
    return page.toString().replace("\r\n", "\n");
  }

  private static String counted(String source, String statuses, List<Line> lines) {
    return row(
        source,
        statuses,
        lines.size(),
        count(lines, Outcome.AGREES),
        count(lines, Outcome.MISSES),
        count(lines, Outcome.NOT_COMPARED));
  }

  private static String statuses(List<Line> lines) {
    return lines.stream()
        .map(line -> line.row().status())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static String unit(PublishedRow row) {
    return row.unit().equals("true=1") ? "(1: so it is)" : row.unit();
  }

  private static String cases(List<Line> lines) {
    return lines.stream()
        .map(line -> line.row().id().substring(0, 3))
        .distinct()
        .collect(Collectors.joining(", "));
  }
}
