package org.leverbook.article;

import org.leverbook.display.Picture;
import org.leverbook.display.Sheet;

/** What an article consists of, one piece after another. */
sealed interface Part {

  /**
   * Paragraphs.
   *
   * @param prose Markdown
   */
  record Text(Prose prose) implements Part {}

  /**
   * A heading.
   *
   * @param words plain text
   */
  record Heading(String words) implements Part {}

  /**
   * What somebody said.
   *
   * @param prose Markdown
   * @param who said it; empty where nobody is named
   */
  record Quote(Prose prose, String who) implements Part {}

  /**
   * A remark beside the text.
   *
   * @param prose Markdown
   */
  record Note(Prose prose) implements Part {}

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
