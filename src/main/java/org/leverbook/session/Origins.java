package org.leverbook.session;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Which text each compiled snippet came from, so that a line in it can be told in that text. */
final class Origins {

  /**
   * A place of a snippet.
   *
   * @param source the text it was part of
   * @param start where it begins there
   */
  record Origin(SourceText source, int start) {

    /** The line of the text for a line of the snippet, both from 1. */
    int line(int snippetLine) {
      int line = source.lineAt(start) + Math.max(1, snippetLine) - 1;
      return Math.min(line, source.lines());
    }

    /** The column where the code of that line begins. */
    int column(int line) {
      return line == source.lineAt(start) ? source.columnAt(start) : source.firstColumn(line);
    }
  }

  private final Map<String, Origin> byId = new HashMap<>();

  void add(String id, SourceText source, int start) {
    byId.put(id, new Origin(source, start));
  }

  void remove(String id) {
    byId.remove(id);
  }

  /** The origin that a stack frame names, where it is a frame of the user's code. */
  Optional<Origin> of(StackTraceElement frame) {
    String file = frame.getFileName();
    return file == null || !file.startsWith("#")
        ? Optional.empty()
        : Optional.ofNullable(byId.get(file.substring(1)));
  }
}
