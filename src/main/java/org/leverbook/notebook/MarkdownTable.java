package org.leverbook.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;

/** An HTML table with its caption and the sentences below it, as Markdown. */
final class MarkdownTable {

  private MarkdownTable() {}

  /** The tables of a fragment; empty where it has none, or holds more than tables and sentences. */
  static Optional<String> of(String html) {
    Element body = Jsoup.parseBodyFragment(html).body();
    if (body.select("> table").isEmpty()) {
      return Optional.empty();
    }
    List<String> parts = new ArrayList<>();
    for (Element child : body.children()) {
      switch (child.normalName()) {
        case "table" -> parts.add(table(child));
        case "p" -> parts.add(Markdown.escaped(child.text()));
        default -> {
          return Optional.empty();
        }
      }
    }
    return Optional.of(String.join("\n\n", parts));
  }

  private static String table(Element table) {
    StringBuilder text = new StringBuilder();
    Element caption = table.selectFirst("caption");
    if (caption != null && !caption.text().isBlank()) {
      text.append("**").append(Markdown.escaped(caption.text())).append("**\n\n");
    }
    List<Element> rows = table.select("tr");
    int width = rows.stream().mapToInt(row -> row.childrenSize()).max().orElse(0);
    if (width == 0) {
      return text.toString().strip();
    }
    boolean headed = !rows.get(0).select("th").isEmpty();
    if (!headed) {
      row(text, List.of(), width);
      rule(text, rows, width);
    }
    for (int r = 0; r < rows.size(); r++) {
      row(text, rows.get(r).children(), width);
      if (headed && r == 0) {
        rule(text, rows.subList(1, rows.size()), width);
      }
    }
    return text.toString().stripTrailing();
  }

  private static void row(StringBuilder text, List<Element> cells, int width) {
    for (int c = 0; c < width; c++) {
      String cell = c < cells.size() ? cells.get(c).text() : "";
      text.append("| ").append(Markdown.escaped(cell).replace("|", "\\|"));
      text.append(cell.isEmpty() ? "" : " ");
    }
    text.append("|\n");
  }

  private static void rule(StringBuilder text, List<Element> rows, int width) {
    for (int c = 0; c < width; c++) {
      int column = c;
      boolean numbers =
          rows.stream()
              .filter(row -> column < row.childrenSize())
              .anyMatch(row -> CleanHtml.isNumber(row.child(column).text()));
      text.append(numbers ? "| ---: " : "| --- ");
    }
    text.append("|\n");
  }
}
