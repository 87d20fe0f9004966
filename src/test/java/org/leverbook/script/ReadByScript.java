package org.leverbook.script;

import java.nio.file.Path;

/** Reads a script as running it does, for tests of other rooms. */
public final class ReadByScript {

  private ReadByScript() {}

  /** The cells of a script. */
  public static Object cells(Path file) {
    return ScriptCells.of(ScriptFile.read(file).text(), text -> false).notebook();
  }
}
