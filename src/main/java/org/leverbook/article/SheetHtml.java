package org.leverbook.article;

import java.util.List;
import org.leverbook.display.Sheet;

/** A table as a page shows it: numbers to the right, wide ones to be pushed aside with a finger. */
public final class SheetHtml {

  private SheetHtml() {}

  /**
   * The table without title and notes, in a {@code div} of class {@code scroll}.
   *
   * @param sheet which
   * @param label what it is called, for listeners
   * @return well-formed HTML
   */
  public static String of(Sheet sheet, String label) {
    StringBuilder html = new StringBuilder();
    html.append("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"");
    html.append(Page.escaped(label)).append("\">\n<table>\n<thead><tr>");
    for (int c = 0; c < sheet.columns().size(); c++) {
      html.append("<th scope=\"col\"").append(side(sheet, c)).append('>');
      html.append(Page.escaped(sheet.columns().get(c).heading())).append("</th>");
    }
    html.append("</tr></thead>\n<tbody>\n");
    for (int r = 0; r < sheet.rows().size(); r++) {
      html.append("<tr>");
      List<String> cells = sheet.shownRow(r);
      for (int c = 0; c < cells.size(); c++) {
        html.append("<td").append(side(sheet, c)).append('>');
        html.append(Page.escaped(cells.get(c))).append("</td>");
      }
      html.append("</tr>\n");
    }
    return html.append("</tbody>\n</table>\n</div>\n").toString();
  }

  private static String side(Sheet sheet, int column) {
    return sheet.numeric(column) ? " class=\"right\"" : "";
  }
}
