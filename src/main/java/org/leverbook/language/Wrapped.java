package org.leverbook.language;

/** Breaks lists that would run over the line. */
final class Wrapped {

  private Wrapped() {}

  /** The text in lines of a width; breaks only behind a comma and a blank. */
  static String text(String list, int width) {
    StringBuilder text = new StringBuilder();
    int column = 0;
    for (String item : list.split("(?<=, )")) {
      if (column > 0 && column + item.stripTrailing().length() > width) {
        text.setLength(text.length() - 1);
        text.append('\n');
        column = 0;
      }
      text.append(item);
      column += item.length();
    }
    return text.toString();
  }
}
