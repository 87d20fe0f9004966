package org.leverbook.language;

import org.leverbook.article.Article;
import org.leverbook.quantity.Refused;

/** The words that make an article; {@link Vocabulary} hands them on. */
public abstract sealed class ArticleWords extends ViewWords permits DeskWords {

  ArticleWords() {}

  /**
   * An article of text, tables and figures, as in {@code article("What a hinge asks").text("The low
   * back bears {}.", start.moment(L5_S1)).figure(start.picture(), "The arms.").save("hinge")}.
   *
   * <p>{@code .heading}, {@code .text}, {@code .quote}, {@code .note}, {@code .table} and {@code
   * .figure} add to it; captions are numbered, and method, caution and what it takes to make it
   * again come by themselves. {@code article("")} is refused: "The title is empty: write one, as in
   * "What a hinge asks of the low back"."
   *
   * @param title plain text
   * @return the article; {@code .save("hinge")} writes a page and Markdown
   * @throws Refused if the title is missing or empty
   */
  public static Article article(String title) {
    return Article.of(title);
  }
}
