package org.leverbook.terminal;

import java.util.Optional;
import java.util.regex.Pattern;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Value;

/**
 * A line that begins with a dot goes on with the sentence before, as it does in a script: typed at
 * a prompt of its own, it is put behind that sentence, and both are evaluated as one.
 */
final class Continued {

  private static final Pattern DOT = Pattern.compile("\\s*\\.(?!\\d)");
  private static final Pattern END = Pattern.compile("[\\s;]+$");

  private String sentence = "";

  /** Whether a text only goes on with another. */
  static boolean isMeant(String text) {
    return DOT.matcher(text).lookingAt();
  }

  /** The whole sentence; empty where there is nothing to go on with. */
  Optional<String> whole(String text) {
    return sentence.isEmpty() ? Optional.empty() : Optional.of(sentence + "\n" + text);
  }

  /** A text was evaluated. */
  void evaluated(String text, Evaluation evaluation) {
    if (!evaluation.ok() || evaluation.unitsDone() == 0) {
      return;
    }
    // Of several sentences the last is meant, which is known where it has a value.
    int line = evaluation.unitsDone() == 1 ? 1 : evaluation.value().map(Value::line).orElse(0);
    String last = line == 0 ? "" : fromLine(text, line);
    sentence = END.matcher(last).replaceFirst("");
  }

  private static String fromLine(String text, int line) {
    int from = 0;
    for (int i = 1; i < line; i++) {
      from = text.indexOf('\n', from) + 1;
    }
    return text.substring(from);
  }
}
