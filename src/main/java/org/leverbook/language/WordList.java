package org.leverbook.language;

import java.util.ArrayList;
import java.util.List;

/** The words by theme, read from the list beside this class. */
public final class WordList {

  /**
   * A line of the list.
   *
   * @param theme under which heading it stands
   * @param words the words it is about
   * @param example a line that works
   * @param meaning what it does
   */
  record Entry(String theme, List<String> words, String example, String meaning) {}

  private WordList() {}

  static List<Entry> entries() {
    List<Entry> entries = new ArrayList<>();
    String theme = "";
    for (String line : Entries.lines("words.txt")) {
      if (line.startsWith("[")) {
        theme = line.substring(1, line.length() - 1);
      } else {
        String[] cells = line.split(" \\| ", 3);
        entries.add(new Entry(theme, List.of(cells[0].split(", ")), cells[1], cells[2]));
      }
    }
    return entries;
  }

  /**
   * The lines that show a word at work.
   *
   * @param word any word
   * @return those of its own entries first; empty where there are none
   */
  public static List<String> examplesOf(String word) {
    return entries().stream()
        .filter(entry -> entry.example().contains(word))
        .sorted(java.util.Comparator.comparing(entry -> !entry.words().contains(word)))
        .map(Entry::example)
        .toList();
  }
}
