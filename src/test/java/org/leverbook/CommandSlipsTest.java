package org.leverbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** A command typed wrong is answered with what was wrong and what would do. */
class CommandSlipsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "runn|leverbook has no command \"runn\": did you mean run?",
        "play|leverbook has no command \"play\"; it has run, export, kernel.",
        "run|leverbook run also needs a file, such as lesson.jsh.",
        "run a.jsh b.jsh|leverbook run takes one file; \"b.jsh\" is more than it takes.",
        "run a.jsh --outt x|leverbook run has no option \"--outt\": did you mean --out?",
        "export a.jsh|leverbook export also needs --to=KIND.",
        "export a.jsh --to pdf|--to takes html, md, ipynb or jsh, not \"pdf\".",
        "export a.jsh --to md --code open|--code takes folded, shown or none, not \"open\".",
        "run a.jsh --limit soon|\"soon\" is no number of seconds, such as 60.",
        "run a.jsh --limit 5|--in-place, --light and --limit are for notebooks; a.jsh is none.",
        "kernel instal|leverbook kernel has no command \"instal\": did you mean install?",
        "kernel install --system --prefix x|Only one of these can be said at once: --system,"
            + " --prefix.",
      })
  void what_was_wrong_and_what_would_do(String typed, String sentence) {
    StringWriter told = new StringWriter();
    CommandLine line = Main.commandLine().setErr(new PrintWriter(told, true));

    assertThat(line.execute(typed.split(" "))).isEqualTo(2);
    assertThat(told.toString()).startsWith(sentence + System.lineSeparator()).contains("--help");
  }
}
