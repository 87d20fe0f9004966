package org.leverbook.article;

import java.util.Locale;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * What the name of an article's file asks for.
 *
 * @param stem the name without its ending
 * @param page whether a page is asked for
 * @param markdown whether Markdown is asked for
 */
record FileName(String stem, boolean page, boolean markdown) {

  static FileName of(String name) {
    String file = Ask.present("file name", name, "\"hinge-article\"").strip();
    String small = file.toLowerCase(Locale.ROOT);
    boolean page = small.endsWith(".html");
    boolean markdown = small.endsWith(".md");
    // An ending begins with a letter: "squat 97.5kg" has none.
    if (!page && !markdown && small.matches(".*\\.[a-z][a-z0-9]{0,4}")) {
      throw new Refused(
          "An article is saved as .html or .md, not as \""
              + file
              + "\"; a name without an ending saves both.");
    }
    String stem = page || markdown ? file.substring(0, file.lastIndexOf('.')) : file;
    if (stem.isBlank() || stem.endsWith("/") || stem.endsWith("\\")) {
      throw new Refused("An article needs a file name, such as save(\"hinge-article\").");
    }
    boolean both = !page && !markdown;
    return new FileName(stem, page || both, markdown || both);
  }
}
