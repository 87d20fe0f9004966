package org.leverbook.article;

import java.util.List;
import java.util.stream.Stream;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/** What is asked of everything that an article is given. */
final class Given {

  private Given() {}

  /** A text that says something, without blanks at its ends. */
  static String text(String what, String text, String example) {
    String given = Ask.present(what, text, example).strip();
    if (given.isEmpty()) {
      throw new Refused("The " + what + " is empty: write one, as in " + example + ".");
    }
    return given;
  }

  static <T> List<T> joined(List<? extends T> one, List<? extends T> other) {
    return Stream.<T>concat(one.stream(), other.stream()).toList();
  }
}
