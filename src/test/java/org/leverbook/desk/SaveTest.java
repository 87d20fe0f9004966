package org.leverbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.data.Version;
import org.leverbook.display.OutputFolder;

/** What worked is kept as a script, and comes back. */
class SaveTest {

  @TempDir private Path folder;
  private Typed typed;

  @BeforeEach
  void open() {
    OutputFolder.choose(folder);
    typed = new Typed();
  }

  @AfterEach
  void close() {
    typed.close();
    OutputFolder.choose(Path.of(""));
  }

  @Test
  void a_saved_script_holds_what_worked_in_order_and_gives_the_same_values_again()
      throws IOException {
    typed.works("help()");
    typed.works("// Who lifts.\r\nvar lifter = person(MALE, kg(85), cm(178)); mine()");
    typed.fails("var pull = hinge(lifter).holding(barbell(kg(-1)));");
    typed.works("var pull = hinge(lifter).holding(barbell(kg(100)));");
    typed.works("var wrong = 3;");
    typed.works("undo()");
    typed.works("pull.start()");
    // The compiler's own name of that result.
    String name = typed.desk.lastResult().orElseThrow();
    String moment = typed.answer(name + ".moment(HIP)");
    typed.fails("var a = 1; nothing(); var b = 2;");
    assertThat(typed.answer("save(\"lesson.jsh\")"))
        .isEqualTo("saved " + folder.resolve("lesson.jsh"));

    String result = name.replace("$", "result");
    assertThat(Files.readString(folder.resolve("lesson.jsh")))
        .isEqualTo(
            "// Leverbook "
                + Version.number()
                + ": what worked in a session, in order. Runs again as it is.\n\n"
                + "// Who lifts.\nvar lifter = person(MALE, kg(85), cm(178));\n\n"
                + "var pull = hinge(lifter).holding(barbell(kg(100)));\n\n"
                + "var "
                + result
                + " = pull.start();\n"
                + result
                + "\n\n"
                + result
                + ".moment(HIP)\n\n"
                + "var a = 1;\n");
    try (Typed other = new Typed()) {
      List<String> again =
          other.works("load(\"lesson.jsh\")\npull.holding(barbell(kg(100))).start().moment(HIP)");
      assertThat(again)
          .contains(moment)
          .contains("lesson.jsh ran: 6 statements, and made lifter, pull, " + result + ", a.");
      assertThat(again.get(again.size() - 1)).isEqualTo(moment);
      other.works("save(\"again.jsh\")");
      assertThat(Files.readString(folder.resolve("again.jsh")))
          .startsWith(Files.readString(folder.resolve("lesson.jsh")));
    }
  }

  @Test
  void what_cannot_be_saved_or_loaded_is_refused_in_a_sentence() throws IOException {
    assertThat(typed.fails("save(\"lesson.jsh\")"))
        .isEqualTo("Nothing has worked yet that could be saved in lesson.jsh.");
    assertThat(typed.fails("load(\"nowhere.jsh\")"))
        .isEqualTo(
            "There is no file \"nowhere.jsh\" in "
                + Path.of("").toAbsolutePath()
                + ". Check the name, or give the whole path.");
    assertThat(typed.fails("load(\"lesson.txt\")"))
        .isEqualTo(
            "A script's name ends in .jsh, a notebook's in .ipynb; \"lesson.txt\" does not.");
    Files.writeString(folder.resolve("self.jsh"), "var n = 1;\nload(\"self.jsh\")\n");
    assertThat(typed.fails("load(\"self.jsh\")"))
        .isEqualTo(
            "self.jsh, line 2: self.jsh loads itself, which would never end: take its load(…) out of it.");
    Files.writeString(folder.resolve("bad.jsh"), "var m = 1;\n\nbarbell(kg(-1))\n");
    assertThat(typed.fails("load(\"bad.jsh\")")).startsWith("bad.jsh, line 3: ");
    assertThat(typed.answer("m")).isEqualTo("1");
  }

  @Test
  void one_undo_takes_a_whole_loaded_script_back() throws IOException {
    Files.writeString(folder.resolve("two.jsh"), "var one = 1;\nvar two = 2;\n");
    typed.works("load(\"two.jsh\")");
    assertThat(typed.answer("undo()"))
        .isEqualTo("Taken back: input 1, load(\"two.jsh\")\ntwo and one are gone.");
  }

  @Test
  void a_session_is_kept_as_a_notebook_too_and_its_code_comes_back() throws IOException {
    typed.works("var mass = kg(85);\nmine()");
    typed.works("mass.multiply(2)");
    typed.works("save(\"night.ipynb\")");
    assertThat(Files.readString(folder.resolve("night.ipynb")))
        .contains("\"nbformat\": 4", "# night", "var mass = kg(85);", "mass.multiply(2)")
        .doesNotContain("mine()");
    try (Typed other = new Typed()) {
      assertThat(other.works("load(\"night.ipynb\")"))
          .containsExactly("170 kg", "night.ipynb ran: 2 statements, and made mass.");
    }
    String foreign =
        Files.readString(folder.resolve("night.ipynb")).replace("\"java\"", "\"python\"");
    Files.writeString(folder.resolve("foreign.ipynb"), foreign);
    assertThat(typed.fails("load(\"foreign.ipynb\")"))
        .isEqualTo("foreign.ipynb is a notebook in python; here only Java can be run.");
    assertThat(typed.fails("save(\"lesson.txt\")"))
        .isEqualTo(
            "A session is saved as a script, whose name ends in .jsh, or as a notebook, in .ipynb:"
                + " \"lesson.txt\" does not.");
  }

  @Test
  void an_article_made_in_the_session_tells_its_code() {
    typed.works("var mass = kg(85);");
    typed.works("var page = article(\"A page\").text(\"One sentence.\");");
    typed.works("page.save(\"page.md\")");
    assertThat(folder.resolve("page.md")).content().contains("var mass = kg(85);");
  }

  @Test
  void the_last_failure_can_be_looked_into() {
    assertThat(typed.answer("trace()")).isEqualTo("Nothing has failed so far.");
    assertThat(typed.answer("original()")).isEqualTo("Nothing has failed so far.");
    typed.fails("barbell(kg(-1))");
    assertThat(typed.answer("trace()")).contains("Refused: ", "at org.leverbook.load.Barbell");
    typed.fails("int n = \"three\";");
    assertThat(typed.answer("original()")).contains("incompatible types");
    assertThat(typed.answer("trace()")).startsWith("The last failure threw nothing: ");
  }
}
