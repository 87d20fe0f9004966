package org.leverbook.article;

import java.util.Optional;
import org.leverbook.display.Picture;
import org.leverbook.display.Sheet;

/** What an article consists of, one piece after another. */
sealed interface Part {

  /** Its text or caption, which may refer to figures and tables; empty where it has none. */
  default Optional<Prose> prose() {
    if (this instanceof Text text) {
      return Optional.of(text.words());
    }
    if (this instanceof Quote quote) {
      return Optional.of(quote.words());
    }
    if (this instanceof Note note) {
      return Optional.of(note.words());
    }
    if (this instanceof Tabled tabled) {
      return Optional.of(tabled.caption());
    }
    return this instanceof Pictured pictured ? Optional.of(pictured.caption()) : Optional.empty();
  }

  /**
   * Paragraphs.
   *
   * @param words Markdown
   */
  record Text(Prose words) implements Part {}

  /**
   * A heading.
   *
   * @param words plain text
   */
  record Heading(String words) implements Part {}

  /**
   * What somebody said.
   *
   * @param words Markdown
   * @param who said it; empty where nobody is named
   */
  record Quote(Prose words, String who) implements Part {}

  /**
   * A remark beside the text.
   *
   * @param words Markdown
   */
  record Note(Prose words) implements Part {}

  /**
   * A table with its caption.
   *
   * @param name for references; empty for none
   * @param sheet what it shows
   * @param caption Markdown
   */
  record Tabled(String name, Sheet sheet, Prose caption) implements Part {}

  /**
   * A picture with its caption.
   *
   * @param name for references; empty for none
   * @param picture what it shows
   * @param caption Markdown
   */
  record Pictured(String name, Picture picture, Prose caption) implements Part {}

  /** The place of the method, where it is not the end. */
  record MethodPlace() implements Part {}
}
