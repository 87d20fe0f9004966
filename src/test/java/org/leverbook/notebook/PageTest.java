package org.leverbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.display.Caution;

/** Notebooks as pages: what a reader sees, and what never gets onto one. */
class PageTest {

  private static final String DOT =
      "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNiAAAABgADNjd8qAAAAABJRU5ErkJggg==";

  @TempDir private Path folder;

  private Page page(CodeShown code, Cell... cells) {
    return new Page(Notebook.ofCells(List.of(cells)), "lesson", code, folder);
  }

  private Document html(Cell... cells) {
    return Jsoup.parse(page(CodeShown.FOLDED, cells).html());
  }

  private String markdown(Cell... cells) {
    byte[] text = page(CodeShown.FOLDED, cells).markdown().get("lesson.md");
    return new String(text, StandardCharsets.UTF_8);
  }

  private static Cell gave(Output... outputs) {
    return Cell.code("code()").ran(OptionalInt.of(1), List.of(outputs));
  }

  private static Output.Given given(String... forms) {
    Map<String, String> data = new java.util.LinkedHashMap<>();
    for (int i = 0; i < forms.length; i += 2) {
      data.put(forms[i], forms[i + 1]);
    }
    return new Output.Given(true, new MimeBundle(data));
  }

  @Test
  void the_page_needs_no_other_file_no_network_and_no_script() {
    String html =
        page(
                CodeShown.FOLDED,
                Cell.prose("# T\n\n![x](https://example.org/x.png)"),
                gave(given("image/svg+xml", "<svg><script>alert(1)</script></svg>")))
            .html();

    assertThat(html).doesNotContain("<script", "<link", "src=\"http", "@import");
    assertThat(html).contains("default-src 'none'").doesNotContain("script-src");
    assertThat(html).contains("<img alt=", "src=\"data:image/svg+xml;base64,");
    assertThat(html).contains("<a href=\"https://example.org/x.png\"");
    assertThat(html).contains(Caution.TEXT);
  }

  @Test
  void the_title_is_the_first_heading_or_the_files_name() {
    assertThat(html(Cell.prose("# Hips & *bars*")).title()).isEqualTo("Hips & *bars*");
    Document named = html(gave());
    assertThat(named.title()).isEqualTo("lesson");
    assertThat(named.selectFirst("h1").text()).isEqualTo("lesson");
    assertThat(markdown(gave())).startsWith("# lesson\n");
  }

  @Test
  void code_is_folded_open_or_gone_as_asked() {
    Cell cell = gave();
    Document folded = Jsoup.parse(page(CodeShown.FOLDED, cell).html());
    assertThat(folded.select("details:not([open]) pre.code").text()).isEqualTo("code()");
    Document shown = Jsoup.parse(page(CodeShown.SHOWN, cell).html());
    assertThat(shown.select("details[open] pre.code").text()).isEqualTo("code()");
    assertThat(Jsoup.parse(page(CodeShown.NONE, cell).html()).select("details")).isEmpty();

    String none = new String(page(CodeShown.NONE, cell).markdown().get("lesson.md"));
    assertThat(none).doesNotContain("code()");
    assertThat(markdown(cell)).contains("<details><summary>Code 1</summary>\n\n```java\ncode()\n");
  }

  @Test
  void code_with_every_awkward_sign_reads_as_it_was_written() {
    String code =
        "List<String> s = \"a < b & \\\"c\\\"\"; // </pre><script>x()</script>\nint x = 'y';";

    Document page = html(Cell.code(code).ran(OptionalInt.of(1), List.of()));

    assertThat(page.selectFirst("pre.code").wholeText()).isEqualTo(code);
    assertThat(page.select("script")).isEmpty();
  }

  @Test
  void scripts_handlers_and_styles_in_text_and_values_are_taken_out() {
    String bad =
        "<b onclick=\"x()\">bold</b><script>x()</script><style>p{}</style>"
            + "<a href=\"javascript:x()\">go</a><iframe src=\"https://example.org\"></iframe>"
            + "<svg onload=\"x()\"></svg><form><input></form>";

    String page = html(Cell.prose("Text\n\n" + bad), gave(given("text/html", bad))).body().html();

    assertThat(page).contains("<b>bold</b>");
    assertThat(page)
        .doesNotContain(
            "onclick", "<script", "<style", "javascript:", "<iframe", "onload", "<form");
  }

  @Test
  void a_moving_picture_keeps_its_own_page_in_a_closed_frame() {
    String framed =
        "<figure class=\"moving\"><iframe srcdoc=\"&lt;script&gt;go()&lt;/script&gt;\""
            + " src=\"https://example.org\"></iframe><figcaption>It moves.</figcaption></figure>";

    String html = page(CodeShown.FOLDED, gave(given("text/html", framed))).html();

    var frame = Jsoup.parse(html).selectFirst("figure.moving iframe");
    assertThat(frame.attr("sandbox")).isEqualTo("allow-scripts");
    assertThat(frame.attr("srcdoc")).isEqualTo("<script>go()</script>");
    assertThat(frame.hasAttr("src")).isFalse();
    assertThat(html).contains("default-src 'none'", "script-src 'unsafe-inline'");
  }

  @Test
  void tables_can_scroll_and_their_numbers_stand_right() {
    String table =
        "<table><caption>Arms</caption><thead><tr><th>joint</th><th>arm (cm)</th></tr></thead>"
            + "<tbody><tr><td>hip</td><td>44.4</td></tr></tbody></table><p>A note.</p>";

    Document page = html(gave(given("text/plain", "x", "text/html", table)));

    assertThat(page.select("div.wide[tabindex=0] > table")).hasSize(1);
    assertThat(page.selectFirst("div.wide").attr("aria-label")).isEqualTo("Arms");
    assertThat(page.select("td.number").eachText()).containsExactly("44.4");
    assertThat(page.select("th.number").eachText()).containsExactly("arm (cm)");
    assertThat(markdown(gave(given("text/plain", "x", "text/html", table))))
        .contains("**Arms**\n\n| joint | arm (cm) |\n| --- | ---: |\n| hip | 44.4 |\n\nA note.");
  }

  @Test
  void a_picture_tells_what_is_to_be_seen() {
    String svg = "<svg><title>Start</title><desc>The bar hangs.</desc></svg>";
    Cell cell = gave(given("text/plain", "picture", "image/svg+xml", svg, "image/png", DOT));

    assertThat(html(cell).select("img").eachAttr("alt")).containsExactly("Start. The bar hangs.");
    Map<String, byte[]> files = page(CodeShown.NONE, cell).markdown();
    assertThat(files).containsOnlyKeys("lesson.md", "lesson-1.svg");
    assertThat(new String(files.get("lesson-1.svg"), StandardCharsets.UTF_8)).isEqualTo(svg);
    assertThat(markdown(cell)).contains("![Start. The bar hangs.](lesson-1.svg)");
  }

  @Test
  void colours_of_a_terminal_are_taken_out() {
    Cell cell =
        gave(
            new Output.Printed("stdout", "\u001b[1;31mred\u001b[0m \u001b]0;t\u0007end\n"),
            new Output.Failed("E", "No.", List.of("\u001b[31mline\u001b[0m", "next")));

    assertThat(html(cell).select("pre.printed").text()).isEqualTo("red end");
    assertThat(html(cell).selectFirst("pre.trace").wholeText()).isEqualTo("line\nnext");
    assertThat(markdown(cell))
        .contains("```text\nred end\n```", "**No.**")
        .doesNotContain("\u001b");
  }

  @Test
  void formulas_stay_as_they_are_written_and_money_is_no_formula() {
    Document page = html(Cell.prose("$M_a * b_c$ and $$x^2_1 * y_1$$, for $5 or $6, *yes*"));

    assertThat(page.select("code.formula").eachText())
        .containsExactly("$M_a * b_c$", "$$x^2_1 * y_1$$");
    assertThat(page.select("em").eachText()).containsExactly("yes");
    assertThat(page.selectFirst("p").text()).contains("for $5 or $6");
  }

  @Test
  void attachments_and_pictures_beside_the_notebook_travel_along_and_no_others()
      throws IOException {
    Files.createDirectories(folder.resolve("img"));
    Files.write(folder.resolve("img/a b.png"), java.util.Base64.getDecoder().decode(DOT));
    Path secret = Files.writeString(folder.resolveSibling(folder.getFileName() + "-x.png"), "s");
    String text =
        "![d](attachment:dot.png) ![b](img/a%20b.png) ![s](../"
            + secret.getFileName()
            + ") ![n](none.png)";
    String json =
        "{\"nbformat\":4,\"nbformat_minor\":5,\"metadata\":{},\"cells\":[{\"cell_type\":\"markdown\","
            + "\"metadata\":{},\"id\":\"a\",\"source\":\""
            + text
            + "\",\"attachments\":{\"dot.png\":{\"image/png\":\""
            + DOT
            + "\"}}}]}";
    Notebook notebook = Notebook.read(Files.writeString(folder.resolve("n.ipynb"), json));
    Page page = new Page(notebook, "n", CodeShown.NONE, folder);

    Document html = Jsoup.parse(page.html());

    assertThat(html.select("img").eachAttr("src"))
        .containsExactly("data:image/png;base64," + DOT, "data:image/png;base64," + DOT);
    assertThat(html.select("a").eachText()).containsExactly("picture: s", "picture: n");
    Map<String, byte[]> files = page.markdown();
    assertThat(files).containsOnlyKeys("n.md", "n-attached-1.png", "img/a b.png");
    assertThat(new String(files.get("n.md"), StandardCharsets.UTF_8))
        .contains("![d](n-attached-1.png) ![b](img/a%20b.png)");
    Files.delete(secret);
  }

  @Test
  void a_notebook_that_was_not_run_says_so() {
    assertThat(html(Cell.code("1 + 1")).select(".warning").text())
        .isEqualTo(
            "This notebook had not been run when this page was made: its results are missing.");
    assertThat(html(gave(), Cell.code("1 + 1")).select(".warning").text())
        .isEqualTo(
            "Some cells had not been run when this page was made (1): their results are missing.");
    assertThat(html(gave(), Cell.code("  ")).select(".warning")).isEmpty();
    assertThat(markdown(Cell.code("1 + 1"))).contains("> This notebook had not been run");
  }

  @Test
  void text_that_holds_a_fence_stays_inside_a_longer_one() {
    assertThat(markdown(gave(new Output.Printed("stdout", "```\nx\n```\n"))))
        .contains("````text\n```\nx\n```\n````");
  }
}
