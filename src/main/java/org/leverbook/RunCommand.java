package org.leverbook;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.leverbook.display.OutputFolder;
import org.leverbook.script.ScriptRun;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code run FILE [--out DIR]}. */
@Command(
    name = "run",
    description = "Runs a .jsh script and prints the value of each bare expression.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionLine.class,
    footer = {
      "",
      "Exit code 0 when all of the script ran, 1 when it did not: the error stream then says",
      "FILE:LINE:COLUMN and the reason. Files written before the error stay."
    })
final class RunCommand implements Callable<Integer> {

  @Parameters(index = "0", paramLabel = "FILE", description = "The script, UTF-8.")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where saved files go; made if missing. Without it: the working folder.")
  private Path folder;

  @Override
  public Integer call() {
    if (folder != null) {
      OutputFolder.choose(folder);
    }
    return new ScriptRun(System.out, System.err).run(file) ? 0 : 1;
  }
}
