package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Sources, numbered as they come; a long name stands once below the table. */
final class Footnotes {

  private final List<String> sources = new ArrayList<>();

  /** The numbers of these sources, as in "1, 4". */
  String numbers(List<String> of) {
    return of.stream().map(this::number).map(String::valueOf).collect(Collectors.joining(", "));
  }

  private int number(String source) {
    if (!sources.contains(source)) {
      sources.add(source);
    }
    return sources.indexOf(source) + 1;
  }

  /** The notes, as in "[1] Somebody 1990". */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    for (int i = 0; i < sources.size(); i++) {
      notes.add("[" + (i + 1) + "] " + sources.get(i));
    }
    return notes;
  }
}
