package org.leverbook.language;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A theme of the help.
 *
 * @param key by which it is asked for
 * @param headings the headings of the word list that belong to it
 * @param about what it is about, in one line
 */
record Theme(String key, List<String> headings, String about) {

  /** All, in their order; a heading that belongs to none is one of its own. */
  static List<Theme> all() {
    List<Theme> all = new ArrayList<>();
    Set<String> left = new LinkedHashSet<>();
    WordList.entries().forEach(entry -> left.add(entry.theme()));
    for (String line : Entries.lines("themes.txt")) {
      String[] cells = line.split(" \\| ", 3);
      Theme theme = new Theme(cells[0], List.of(cells[1].split(" & ")), cells[2]);
      if (theme.headings().stream().anyMatch(left::contains)) {
        all.add(theme);
      }
      theme.headings().forEach(left::remove);
    }
    left.forEach(
        heading -> all.add(new Theme(heading.toLowerCase(Locale.ROOT), List.of(heading), heading)));
    return all;
  }

  static Optional<Theme> find(String key) {
    String wanted = key.strip().toLowerCase(Locale.ROOT);
    return all().stream().filter(theme -> theme.key().equals(wanted)).findFirst();
  }

  /** Its words by heading, each with what it does and an example. */
  String words() {
    return headings.stream().map(Theme::words).collect(Collectors.joining("\n"));
  }

  private static String words(String heading) {
    StringBuilder text = new StringBuilder(heading).append('\n');
    for (WordList.Entry entry : WordList.entries()) {
      if (entry.theme().equals(heading)) {
        text.append("  ").append(String.join(" ", entry.words())).append(": ");
        text.append(entry.meaning()).append("\n      ").append(entry.example()).append('\n');
      }
    }
    return text.toString();
  }
}
