package org.leverbook.notebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.leverbook.data.Version;
import org.leverbook.display.Caution;

/** Writes a notebook as one HTML page. */
final class HtmlPage {

  private final Page page;
  private final StringBuilder html = new StringBuilder();
  private int number;

  HtmlPage(Page page) {
    this.page = page;
  }

  String document() {
    String title = Escaped.html(Escaped.plain(page.title()));
    StringBuilder body = new StringBuilder();
    if (page.notebook().title().isEmpty()) {
      html.append("<h1>").append(title).append("</h1>\n");
    }
    if (!page.warning().isEmpty()) {
      html.append("<p class=\"warning\" role=\"note\">").append(page.warning()).append("</p>\n");
    }
    page.notebook().cells().forEach(this::cell);
    body.append("<main>\n").append(html).append("</main>\n<footer>\n<p>");
    body.append(Escaped.html(Caution.TEXT)).append("</p>\n<p>Made with Leverbook ");
    body.append(Version.number()).append(".</p>\n</footer>\n");
    return head(title, body.indexOf("<iframe") >= 0) + body + "</body>\n</html>\n";
  }

  /** The policy keeps the page off the network, and its frames too: they take it over. */
  private static String head(String title, boolean moves) {
    return "<!DOCTYPE html>\n<html>\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none';"
        + " img-src data:; font-src data:; style-src 'unsafe-inline'"
        + (moves ? "; script-src 'unsafe-inline'" : "")
        + "\">\n<meta name=\"color-scheme\" content=\"light dark\">\n<title>"
        + title
        + "</title>\n<style>\n"
        + style()
        + "</style>\n</head>\n<body>\n";
  }

  private static String style() {
    try (InputStream in = HtmlPage.class.getResourceAsStream("page.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void cell(Cell cell) {
    PictureSource pictures = new PictureSource(page.folder(), cell.attachments());
    if (cell.kind() == Cell.Kind.MARKDOWN) {
      html.append("<section class=\"prose\">\n");
      html.append(Prose.html(cell.source(), pictures)).append("</section>\n");
    } else if (cell.kind() == Cell.Kind.CODE) {
      code(cell, new HtmlOutputs(pictures));
    }
    // Raw cells are for other programs; a reader has no use for them.
  }

  private void code(Cell cell, HtmlOutputs outputs) {
    if (cell.source().isBlank()) {
      return;
    }
    number++;
    html.append("<section class=\"step\">\n");
    if (page.code() != CodeShown.NONE) {
      html.append(
          String.format(
              Locale.ROOT,
              "<details%s><summary>Code %d</summary><pre class=\"code\" tabindex=\"0\"><code>%s"
                  + "</code></pre></details>%n",
              page.code() == CodeShown.SHOWN ? " open" : "",
              number,
              JavaInk.html(Escaped.plain(cell.source().strip()))));
    }
    cell.outputs().forEach(output -> html.append(outputs.html(output)).append('\n'));
    html.append("</section>\n");
  }
}
