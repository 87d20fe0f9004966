package org.leverbook.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leverbook.desk.Desk;
import org.leverbook.notebook.Cell;
import org.leverbook.session.Completeness;

/** A script cut into text and code. */
class ScriptCellsTest {

  private static Desk desk;

  @BeforeAll
  static void open() {
    desk = Desk.open();
  }

  @AfterAll
  static void close() {
    desk.close();
  }

  private static ScriptCells cut(String script) {
    return ScriptCells.of(
        script, code -> desk.session().completeness(code) == Completeness.INCOMPLETE);
  }

  private static List<String> cells(String script) {
    return cut(script).notebook().cells().stream()
        .map(c -> (c.kind() == Cell.Kind.CODE ? "code " : "text ") + c.source())
        .toList();
  }

  @Test
  void comments_become_text_and_blank_lines_end_cells() {
    assertThat(cells("// # Title\n//\n// Words\n// go on.\n\nvar a = 1;\nvar b = 2;\n\n\na + b\n"))
        .containsExactly(
            "text # Title\n\nWords\ngo on.", "code var a = 1;\nvar b = 2;", "code a + b");
  }

  @Test
  void blank_lines_and_comments_inside_brackets_and_texts_stay_in_their_code() {
    String method = "int twice(int x) {\n\n// a remark\n  return 2 * x;\n}";
    String text = "var t = \"\"\"\n  one\n\n// two\n  \"\"\";";

    assertThat(cells(method + "\n\n" + text)).containsExactly("code " + method, "code " + text);
  }

  @Test
  void a_comment_between_two_steps_of_one_sentence_stays_with_it() {
    String sentence = "Stream.of(1, 2)\n// each twice\n    .map(x -> 2 * x)\n    .toList()";

    assertThat(cells(sentence)).containsExactly("code " + sentence);
  }

  @Test
  void a_comment_between_two_sentences_parts_them() {
    assertThat(cells("1 + 1\n// Then.\n2 + 2 // so\n  // indented\n3"))
        .containsExactly("code 1 + 1", "text Then.", "code 2 + 2 // so\n  // indented\n3");
  }

  @Test
  void rules_say_nothing_and_types_in_text_are_no_tags() {
    assertThat(cells("// -----\n// A List<Mass> is meant, `List<Mass>`.\n// =====\n// B < C\n"))
        .containsExactly("text A List<Mass> is meant, `List<Mass>`.\n\nB \\< C");
  }

  @Test
  void each_cell_knows_its_line_in_the_script() {
    ScriptCells cut = cut("// one\n\n1\n\n\n// two\n2\n\r\n3");

    assertThat(List.of(cut.line(1), cut.line(2), cut.line(3))).containsExactly(3, 7, 9);
  }

  @Test
  void the_shipped_notebooks_lose_no_line_of_code_and_break_no_sentence() throws IOException {
    int seen = 0;
    try (var files = Files.list(Path.of("notebooks"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".jsh")).toList()) {
        String script = Files.readString(file);
        List<String> code = new ArrayList<>();
        for (Cell cell : cut(script).notebook().cells()) {
          if (cell.kind() == Cell.Kind.CODE) {
            assertThat(desk.session().completeness(cell.source()))
                .as(file + ": " + cell.source())
                .isEqualTo(Completeness.COMPLETE);
            cell.source().lines().filter(l -> !l.isBlank()).forEach(code::add);
          }
        }
        assertThat(code)
            .containsExactlyElementsOf(
                script.lines().filter(l -> !l.isBlank() && !l.startsWith("//")).toList());
        seen++;
      }
    }
    assertThat(seen).isGreaterThanOrEqualTo(4);
  }
}
