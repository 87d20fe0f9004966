package org.leverbook.terminal;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.leverbook.display.Saved;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Refused;
import org.leverbook.session.Problem;
import org.leverbook.session.Value;

/** Tells the user values and problems; from any thread, one at a time. */
final class Voice {

  /**
   * How things are said here.
   *
   * @param fitted cuts a text to the place there is
   * @param alarming marks a text as an error
   * @param aside marks a text as less important
   * @param picture what to write so that a picture is seen; empty where it cannot be
   */
  record Manner(
      UnaryOperator<String> fitted,
      UnaryOperator<String> alarming,
      UnaryOperator<String> aside,
      Function<Shown, Optional<String>> picture) {

    /** Just as it is. */
    static final Manner PLAIN =
        new Manner(text -> text, text -> text, text -> text, shown -> Optional.empty());
  }

  private final PrintWriter out;
  private final PrintWriter err;
  private final Manner manner;
  private final PictureFiles pictures = new PictureFiles();

  /**
   * A voice.
   *
   * @param out for values
   * @param err for problems and notes
   * @param manner how
   */
  Voice(PrintWriter out, PrintWriter err, Manner manner) {
    this.out = out;
    this.err = err;
    this.manner = manner;
  }

  /** Says a value; a picture is shown where it can be, saved, and its place said. */
  synchronized void value(Value value) {
    // What the user's code printed on its own comes first.
    System.out.flush();
    out.println(manner.fitted().apply(value.text()));
    try {
      Shown shown = value.shown();
      Optional<Saved> saved = pictures.save(shown);
      saved.flatMap(files -> manner.picture().apply(shown)).ifPresent(out::print);
      saved.ifPresent(files -> out.println(files.text()));
    } catch (Refused e) {
      problem(e.getMessage());
    }
    out.flush();
  }

  /** Says a sentence that is neither value nor error. */
  synchronized void note(String sentence) {
    out.println(manner.fitted().apply(sentence));
    out.flush();
  }

  /** Says something that can be left unread. */
  synchronized void aside(String sentence) {
    out.println(manner.aside().apply(manner.fitted().apply(sentence)));
    out.flush();
  }

  /** Says an error in one sentence. */
  synchronized void problem(String sentence) {
    err.println(manner.alarming().apply(manner.fitted().apply(sentence)));
    err.flush();
  }

  /**
   * Says a problem, with the line and a caret.
   *
   * @param problem what went wrong
   * @param where what to say before it, such as "line 3: "; may be empty
   */
  synchronized void problem(Problem problem, String where) {
    System.out.flush();
    err.println(manner.alarming().apply(manner.fitted().apply(where + problem.message())));
    if (problem.kind() != Problem.Kind.REFUSAL && !problem.name().equals("Stopped")) {
      err.println(problem.caret());
    }
    problem.trail().forEach(step -> err.println("  " + step));
    err.flush();
  }
}
