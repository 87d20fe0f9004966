package org.leverbook.terminal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.leverbook.desk.Desk;
import org.leverbook.language.Leaving;
import org.leverbook.session.Completeness;
import org.leverbook.session.Evaluation;

/**
 * Reads lines that no person types. Each input stands alone, as at the prompt: one that fails is
 * reported and the next is read, but the end says that one failed. An input is evaluated as soon as
 * it can be, so that a program can talk with the shell through two pipes.
 */
final class PipedInput {

  private final Desk desk;
  private final BufferedReader in;
  private final Voice voice;

  PipedInput(Desk desk, BufferedReader in, Voice voice) {
    this.desk = desk;
    this.in = in;
    this.voice = voice;
  }

  /**
   * Reads to the end, or to {@code quit()}.
   *
   * @return whether every input took effect
   */
  boolean run() {
    boolean good = true;
    StringBuilder input = new StringBuilder();
    int line = 0;
    int begun = 1;
    while (!Leaving.isAsked()) {
      String next = nextLine();
      if (next == null) {
        return (input.length() == 0 || evaluate(input.toString(), begun)) && good;
      }
      line++;
      input.append(input.length() == 0 ? "" : "\n").append(next);
      if (desk.session().completeness(input.toString()) != Completeness.INCOMPLETE) {
        good &= evaluate(input.toString(), begun);
        input.setLength(0);
        begun = line + 1;
      }
    }
    return good;
  }

  private boolean evaluate(String text, int begun) {
    Evaluation evaluation = desk.evaluate(text, voice::value);
    evaluation.notes().forEach(voice::note);
    evaluation
        .problem()
        .ifPresent(p -> voice.problem(p, "input line " + (begun + p.line() - 1) + ": "));
    return evaluation.ok();
  }

  private String nextLine() {
    try {
      return in.readLine();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
