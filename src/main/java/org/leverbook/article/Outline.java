package org.leverbook.article;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leverbook.display.Caution;

/** An article in a dozen lines, for a terminal: what it holds, and what is still open. */
final class Outline {

  private static final int LONGEST = 72;

  private Outline() {}

  static String of(Article article) {
    List<String> lines = new ArrayList<>();
    lines.add(article.title() + (article.author().isEmpty() ? "" : ", by " + article.author()));
    Numbering numbers = article.numbering();
    lines.add(counts(article, numbers));
    for (Part part : article.parts()) {
      line(part, numbers, lines);
    }
    numbers.missing(article.texts()).ifPresent(lines::add);
    Back back = article.back();
    back.untracedSentence().ifPresent(s -> lines.add(s + " Name it by .using(…)."));
    lines.add("save(\"article\") writes article.html and article.md");
    lines.add(Caution.TEXT);
    return String.join("\n", lines);
  }

  private static String counts(Article article, Numbering numbers) {
    long texts = article.parts().stream().filter(p -> p instanceof Part.Text).count();
    return counted(texts, "text")
        + ", "
        + counted(numbers.tables(), "table")
        + ", "
        + counted(numbers.figures(), "figure")
        + "; method, caution and reproduction come by themselves";
  }

  private static String counted(long count, String what) {
    return String.format(Locale.ROOT, "%d %s%s", count, what, count == 1 ? "" : "s");
  }

  private static void line(Part part, Numbering numbers, List<String> lines) {
    if (part instanceof Part.Heading heading) {
      lines.add("  " + heading.words());
    } else if (part instanceof Part.Tabled tabled) {
      lines.add("    " + captioned(part, tabled.name(), tabled.caption(), numbers));
    } else if (part instanceof Part.Pictured pictured) {
      lines.add("    " + captioned(part, pictured.name(), pictured.caption(), numbers));
    }
  }

  private static String captioned(Part part, String name, Prose caption, Numbering numbers) {
    String words =
        caption
            .markdown(n -> numbers.called(n).map(Numbering.Place::word).orElse("{" + n + "}"))
            .replaceAll("\\\\([\\\\`*_\\[\\]<>#|!~&])", "$1");
    String called = name.isEmpty() ? "" : " {" + name + "}";
    return numbers.of(part).word() + called + ": " + shortened(words);
  }

  private static String shortened(String words) {
    return words.codePointCount(0, words.length()) <= LONGEST
        ? words
        : words.substring(0, words.offsetByCodePoints(0, LONGEST)).strip() + "…";
  }
}
