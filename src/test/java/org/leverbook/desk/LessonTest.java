package org.leverbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.display.OutputFolder;

/** The first lesson, typed through as a newcomer would, with mistakes. */
class LessonTest {

  @Test
  void ten_steps_lead_from_a_lifter_to_a_saved_script(@TempDir Path folder) {
    OutputFolder.choose(folder);
    try (Typed typed = new Typed()) {
      assertThat(typed.answer("lesson()")).startsWith("Step 1 of 10: a lifter\nSay who lifts: ");
      assertThat(typed.answer("kg(85)"))
          .isEqualTo(
              "Step 1 of 10 is still open; lesson() tells it again, lesson().hint() gives a line.");
      typed.fails("person(MALE, kg(85))");
      assertThat(typed.answer("lesson().hint()"))
          .isEqualTo("For example:\n  var lifter = person(MALE, kg(85), cm(178));");
      assertThat(typed.works("help(\"moment\")")).hasSize(1);
      // Not the line of the hint, and another name: what it makes counts.
      assertThat(typed.answer("var lifter = person(FEMALE, kg(65), cm(168));"))
          .startsWith("Done: step 1 of 10.\nStep 2 of 10: a lift\n");
      assertThat(
              typed.answer("var pull = hinge(lifter).hipHeight(cm(60)).holding(barbell(kg(80)));"))
          .startsWith("Done: step 2 of 10.\nStep 3 of 10: a table\n");
      typed.works("pull.start()");
      assertThat(typed.answer("pull.finish()"))
          .endsWith("Step 3 of 10 is still open. This line would do:\n  pull.start().moments()");
      assertThat(typed.answer("pull.start().moments()")).startsWith("Done: step 3 of 10.");
      // Two steps in one text.
      assertThat(
              typed.answer(
                  "pull.start().picture()\n"
                      + "var byHip = sweep(\"hip height\", cm(56), cm(64), 3, h ->"
                      + " pull.hipHeight(h).start());"))
          .startsWith("Done: step 5 of 10.\nStep 6 of 10: a plot\n");
      assertThat(typed.answer("byHip.plot(HIP)"))
          .startsWith("Done: step 6 of 10.\nStep 7 of 10: another build\n");
      assertThat(typed.answer("var longThighs = lifter.longer(THIGH, percent(5));"))
          .startsWith("Done: step 7 of 10.");
      assertThat(
              typed.answer(
                  "hinge(lifter).holding(barbell(kg(40))).hipHeight(cm(70)).start()"
                      + ".on(chestPad(deg(30)))"))
          .startsWith("Done: step 8 of 10.");
      assertThat(
              typed.answer(
                  "compare(pull.start(), hinge(longThighs).holding(barbell(kg(80)))"
                      + ".hipHeight(cm(60)).start())"))
          .startsWith("Done: step 9 of 10.");
      assertThat(typed.answer("save(\"mine.jsh\")"))
          .startsWith("Done: step 10 of 10.\nThat was the lesson.");
      assertThat(typed.works("1 + 1")).containsExactly("2");
      assertThat(folder.resolve("mine.jsh")).exists();
    } finally {
      OutputFolder.choose(Path.of(""));
    }
  }

  @Test
  void the_lines_of_the_hints_themselves_go_through_all_steps(@TempDir Path folder)
      throws java.io.IOException {
    OutputFolder.choose(folder);
    try (Typed typed = new Typed()) {
      typed.works("lesson()");
      for (int step = 1; step <= 10; step++) {
        String line = typed.answer("lesson().hint()").lines().toList().get(1).strip();
        assertThat(typed.answer(line)).as(line).startsWith("Done: step " + step + " of 10.");
      }
      assertThat(Files.readString(folder.resolve("lesson.jsh"))).contains("chestPad(deg(30))");
    } finally {
      OutputFolder.choose(Path.of(""));
    }
  }

  @Test
  void it_can_be_left_skipped_through_and_begun_again() {
    try (Typed typed = new Typed()) {
      assertThat(typed.answer("lesson().skip()")).startsWith("Step 2 of 10: a lift");
      assertThat(typed.answer("lesson().leave()"))
          .isEqualTo("Left at step 2 of 10. What you made stays; lesson() begins again.");
      assertThat(typed.works("1 + 1")).containsExactly("2");
      typed.works("lesson().skip()");
      assertThat(typed.answer("lesson().restart()")).startsWith("Step 1 of 10: a lifter");
    }
  }
}
