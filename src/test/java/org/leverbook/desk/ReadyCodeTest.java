package org.leverbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.display.OutputFolder;

/** Every piece of ready code runs, and is put where the user types. */
class ReadyCodeTest {

  @Test
  void every_example_runs_in_an_empty_session_and_shows_something(@TempDir Path folder) {
    OutputFolder.choose(folder);
    try (Typed typed = new Typed()) {
      var names =
          typed
              .answer("examples()")
              .lines()
              .skip(2)
              .filter(line -> !line.startsWith("example("))
              .map(line -> line.split(" ")[0])
              .toList();
      assertThat(names).hasSizeGreaterThan(25).doesNotHaveDuplicates();
      for (String name : names) {
        String code = typed.answer("example(\"" + name + "\")");
        assertThat(code).startsWith("// ");
        typed.desk.reset();
        assertThat(typed.works(code))
            .as(name)
            .isNotEmpty()
            .allSatisfy(value -> assertThat(value).isNotBlank());
      }
    } finally {
      OutputFolder.choose(Path.of(""));
    }
  }

  @Test
  void at_a_door_where_someone_types_the_code_is_handed_over_once() {
    try (Typed typed = new Typed()) {
      typed.desk.welcomeOffers(true);
      assertThat(typed.answer("example(\"plates\")"))
          .isEqualTo(
              "plates: a bar counted as in the gym. It stands at the prompt: Enter runs it.");
      String code = typed.desk.takeOffered().orElseThrow();
      assertThat(Arrays.asList(code.split("\n")))
          .containsExactly("loadedBar(kg(20), kg(20), kg(10))", "barbell(lb(225))");
      assertThat(typed.desk.takeOffered()).isEmpty();
      assertThat(typed.fails("example(\"hinges\")"))
          .isEqualTo("There is no example \"hinges\". Nearest: hinge; examples() lists them all.");
    }
  }
}
