package org.leverbook.terminal;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.leverbook.display.Saved;
import org.leverbook.quantity.Refused;
import org.leverbook.session.Problem;
import org.leverbook.session.Value;

/** Tells the user values and problems. */
final class Voice {

  private final PrintWriter out;
  private final PrintWriter err;
  private final UnaryOperator<String> fitted;
  private final UnaryOperator<String> alarming;
  private final PictureFiles pictures = new PictureFiles();

  /**
   * A voice.
   *
   * @param out for values
   * @param err for problems and notes
   * @param fitted cuts a text to the place there is
   * @param alarming marks a text as an error
   */
  Voice(
      PrintWriter out,
      PrintWriter err,
      UnaryOperator<String> fitted,
      UnaryOperator<String> alarming) {
    this.out = out;
    this.err = err;
    this.fitted = fitted;
    this.alarming = alarming;
  }

  /** Says a value; a picture is saved, and its place said. */
  void value(Value value) {
    // What the user's code printed on its own comes first.
    System.out.flush();
    out.println(fitted.apply(value.text()));
    try {
      Optional<Saved> saved = pictures.save(value.shown());
      saved.ifPresent(files -> out.println(files.text()));
    } catch (Refused e) {
      problem(e.getMessage());
    }
    out.flush();
  }

  /** Says a sentence that is neither value nor error. */
  void note(String sentence) {
    out.println(fitted.apply(sentence));
    out.flush();
  }

  /** Says an error in one sentence. */
  void problem(String sentence) {
    err.println(alarming.apply(fitted.apply(sentence)));
    err.flush();
  }

  /**
   * Says a problem, with the line and a caret.
   *
   * @param problem what went wrong
   * @param where what to say before it, such as "line 3: "; may be empty
   */
  void problem(Problem problem, String where) {
    System.out.flush();
    err.println(alarming.apply(fitted.apply(where + problem.message())));
    if (problem.kind() != Problem.Kind.REFUSAL && !problem.name().equals("Stopped")) {
      err.println(problem.caret());
    }
    problem.trail().forEach(step -> err.println("  " + step));
    err.flush();
  }
}
