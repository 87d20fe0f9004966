package org.leverbook.script;

import java.io.PrintStream;
import java.nio.file.Path;
import org.leverbook.desk.Desk;
import org.leverbook.display.Display;
import org.leverbook.display.InputFile;
import org.leverbook.display.OnStage;
import org.leverbook.display.Progress;
import org.leverbook.display.ProgressLines;
import org.leverbook.display.Stage;
import org.leverbook.language.Leaving;
import org.leverbook.quantity.Refused;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Value;

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
    Stage.Audience watched = Stage.watch(new Printing());
    Path before = InputFile.runs(path);
    try (Desk desk = Desk.open()) {
      Evaluation evaluation = desk.evaluate(script.text(), this::print);
      out.flush();
      evaluation.notes().forEach(note -> err.println(script.name() + ": " + note));
      evaluation.problem().ifPresent(p -> err.println(p.text(script.name() + ":")));
      return evaluation.ok();
    } finally {
      InputFile.lookIn(before);
      Stage.watch(watched);
      Progress.listen(listened);
    }
  }

  private void print(Value value) {
    // A place on the stage was printed when its value was shown.
    if (!(value.object() instanceof OnStage)) {
      out.println(value.text());
    }
  }

  /** What is shown on the way stands between the values, and what takes its place below it. */
  private final class Printing implements Stage.Audience {
    @Override
    public void shows(long scene, Object value) {
      out.println(Display.of(value).text());
    }

    @Override
    public void changes(long scene, Object value) {
      shows(scene, value);
    }
  }
}
