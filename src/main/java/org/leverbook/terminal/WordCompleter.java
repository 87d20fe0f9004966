package org.leverbook.terminal;

import java.util.List;
import java.util.function.BiFunction;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import org.leverbook.session.Completion;

/** Offers what the session knows; the line reader filters and shows it. */
final class WordCompleter implements Completer {

  private final BiFunction<String, Integer, List<Completion>> session;

  WordCompleter(BiFunction<String, Integer, List<Completion>> session) {
    this.session = session;
  }

  @Override
  public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
    for (Completion each : session.apply(line.line(), line.cursor())) {
      String signature = each.signature().isEmpty() ? null : each.signature();
      // Not "complete": no blank is to follow an opening bracket.
      candidates.add(new Candidate(each.text(), each.text(), null, signature, null, null, false));
    }
  }
}
