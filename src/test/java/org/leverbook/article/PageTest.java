package org.leverbook.article;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PageTest {

  private static final String TWO =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\""
          + " aria-labelledby=\"t d\" width=\"10\"><title id=\"t\">A &lt; B</title>"
          + "<clipPath id=\"c\"/><use xlink:href=\"#t\"/><path clip-path=\"url(#c)\" d=\"M0 0\">"
          + "</path></svg>";

  @Test
  void a_page_is_one_well_formed_document_that_fetches_nothing() throws Exception {
    String page =
        Page.of("Hips & \"knees\" <b>").describedAs("Two \"joints\".").around("<p>1 &lt; 2</p>");
    WellFormed document = WellFormed.of(page);
    assertThat(document.texts("title")).containsExactly("Hips & \"knees\" <b>");
    assertThat(document.texts("p")).containsExactly("1 < 2");
    assertThat(document.fetched()).isEmpty();
    assertThat(page).contains("prefers-color-scheme: dark", "@media print", "width=device-width");
  }

  @Test
  void characters_that_no_page_can_hold_become_spaces() {
    assertThat(Page.escaped("a\u0000b\u001b[1m\uD800c\td\n")).isEqualTo("a b [1m c\td\n");
  }

  @Test
  void two_pictures_of_a_page_keep_their_names_apart() throws Exception {
    String page =
        Page.of("x").around(Embedded.svg(TWO, "one-", "") + Embedded.svg(TWO, "two-", ""));
    WellFormed document = WellFormed.of(page);
    assertThat(document.attributes("id"))
        .containsExactly("one-drawing", "one-t", "one-c", "two-drawing", "two-t", "two-c");
    assertThat(document.attributes("aria-labelledby"))
        .containsExactly("one-t one-d", "two-t two-d");
    assertThat(document.attributes("clip-path")).containsExactly("url(#one-c)", "url(#two-c)");
    assertThat(document.attributes("xmlns:xlink")).hasSize(2);
    assertThat(document.all("svg").get(0).getNamespaceURI())
        .isEqualTo("http://www.w3.org/2000/svg");
    assertThat(document.attributes("xlink:href")).containsExactly("#one-t", "#two-t");
    assertThat(document.texts("title")).containsExactly("x", "A < B", "A < B");
  }

  @Test
  void a_drawing_from_elsewhere_brings_no_code_and_fetches_nothing() throws Exception {
    String wild =
        "<?xml version=\"1.0\"?><!DOCTYPE svg><svg xmlns=\"http://www.w3.org/2000/svg\""
            + " onload=\"alert(1)\"><script>alert(2)</script><a href=\"javascript:alert(3)\">"
            + "<rect fill=\"url(http://elsewhere/x)\"/></a><image href=\"http://elsewhere/y\"/>"
            + "<foreignObject><p>hm</p></foreignObject></svg>";
    String part = Embedded.svg(wild, "a-", "a rectangle");
    assertThat(part).doesNotContain("alert").doesNotContain("elsewhere").doesNotContain("hm");
    assertThat(part).contains("<rect", "aria-label=\"a rectangle\"");
  }

  @Test
  void a_drawing_with_a_style_sheet_of_its_own_stands_as_an_image_so_that_it_rules_nothing_else() {
    String part =
        Embedded.svg(
            "<svg xmlns=\"http://www.w3.org/2000/svg\"><style>p{}</style></svg>", "a-", "?");
    assertThat(part).contains("<img alt=\"?\" src=\"data:image/svg+xml;base64,");
  }

  @Test
  void what_is_no_drawing_at_all_still_shows_its_words() {
    assertThat(Embedded.svg("<svg><", "a-", "a bar")).contains("alt=\"a bar\"");
  }
}
