package org.leverbook.script;

import java.io.PrintStream;
import java.nio.file.Path;
import org.leverbook.desk.Desk;
import org.leverbook.display.Progress;
import org.leverbook.display.ProgressLines;
import org.leverbook.language.Leaving;
import org.leverbook.quantity.Refused;
import org.leverbook.session.Evaluation;

/** Runs a script headless. */
public final class ScriptRun {

  private final PrintStream out;
  private final PrintStream err;

  /**
   * A run.
   *
   * @param out where the values of bare expressions go
   * @param err where notes and the error go
   */
  public ScriptRun(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  /**
   * Runs one script.
   *
   * @param path the file
   * @return whether all of it took effect; otherwise the reason stands on the error stream, and
   *     what was written before it stays
   */
  public boolean run(Path path) {
    ScriptFile script;
    try {
      script = ScriptFile.read(path);
    } catch (Refused e) {
      err.println(e.getMessage());
      return false;
    }
    Leaving.forget();
    Progress.Listener listened =
        Progress.listen(new ProgressLines(line -> err.println(script.name() + ": " + line)));
    try (Desk desk = Desk.open()) {
      Evaluation evaluation = desk.evaluate(script.text(), value -> out.println(value.text()));
      out.flush();
      evaluation.notes().forEach(note -> err.println(script.name() + ": " + note));
      evaluation.problem().ifPresent(p -> err.println(p.text(script.name() + ":")));
      return evaluation.ok();
    } finally {
      Progress.listen(listened);
    }
  }
}
