package org.leverbook.article;

import org.leverbook.figure.LabelWords;

/**
 * The article's own words, in one's own language where they were given.
 *
 * @param language tag of the language, as in "en"
 * @param words one's own; null for none
 */
record Labels(String language, LabelWords words) {

  static final Labels ENGLISH = new Labels("en", null);

  /** A heading or a whole sentence, exchanged where it is known. */
  String say(String english) {
    return words == null ? english : words.sentence(english);
  }
}
