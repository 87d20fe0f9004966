package org.leverbook.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.body.JointId;
import org.leverbook.notebook.Notebook;
import org.leverbook.statics.Position;

/**
 * The stills and the film of the lessons show the lifts as they are computed today; where one does
 * not, {@link DemoFiles} writes it anew and prints the marks.
 */
class DemoFilesTest {

  private static String together(String code) {
    return code.replaceAll("\\n\\s*", "");
  }

  private static String lesson() {
    Path file = Path.of("notebooks", "lesson-13-photo-to-moments.ipynb");
    return together(String.join("\n", Notebook.read(file).codeCells()));
  }

  @Test
  void the_marks_of_the_pull_lie_on_its_joints_wherever_it_is_used() throws IOException {
    Rendered still = still("deadlift-still.png", DemoFiles.pull());
    assertThat(Files.readString(Path.of("README.md"))).contains(DemoFiles.marks(still));
    assertThat(Files.readString(Path.of("notebooks", "photo.jsh")))
        .contains(DemoFiles.marks(still));
    assertThat(lesson()).contains(DemoFiles.marks(still));
  }

  @Test
  void the_marks_of_the_curl_lie_on_its_joints() {
    Rendered still = still("still.png", DemoFiles.curl());
    // The hand's place is what the lesson varies.
    String hand = ".mark(\"hand\", ";
    String marks = DemoFiles.marks(still);
    String place =
        marks.substring(marks.indexOf(hand) + hand.length(), marks.lastIndexOf(").mark"));
    assertThat(lesson())
        .contains(marks.replace(place, "handX, handY"))
        .contains("fitted(still(" + place + ", 426), lifter)");
  }

  private static Rendered still(String name, Position position) {
    Path file = DemoFiles.FOLDER.resolve(name);
    assertThat(file).exists();
    return DemoFiles.still(position, file);
  }

  @Test
  void the_stills_are_drawn_from_these_lifts(@TempDir Path folder) {
    for (String name : List.of("still.png", "deadlift-still.png")) {
      Position position = name.startsWith("dead") ? DemoFiles.pull() : DemoFiles.curl();
      DemoFiles.still(position, folder.resolve(name));
      Still now = Still.read(folder.resolve(name).toString());
      Still kept = Still.read(DemoFiles.FOLDER.resolve(name).toString());
      int other = 0;
      for (int x = 0; x < now.width(); x++) {
        for (int y = 0; y < now.height(); y++) {
          other += now.image().getRGB(x, y) == kept.image().getRGB(x, y) ? 0 : 1;
        }
      }
      // Lines of 14 pixels' width may end a pixel elsewhere in another JDK.
      assertThat(other).as("pixels of " + name + " that differ").isLessThan(200);
    }
  }

  @Test
  void the_film_is_the_squat_of_today(@TempDir Path folder) throws IOException {
    List<String> now = Files.readAllLines(DemoFiles.squat().write(folder.resolve("film.csv")));
    List<String> kept = Files.readAllLines(DemoFiles.FOLDER.resolve("squat-landmarks.csv"));
    assertThat(kept).hasSameSizeAs(now);
    for (int i = 2; i < kept.size(); i++) {
      String[] one = kept.get(i).split(",");
      String[] other = now.get(i).split(",");
      assertThat(List.of(one[0], one[1])).isEqualTo(List.of(other[0], other[1]));
      for (int cell : new int[] {2, 3}) {
        // Written to a tenth of a millimetre.
        assertThat(Double.parseDouble(one[cell]))
            .as("line " + (i + 1))
            .isCloseTo(Double.parseDouble(other[cell]), within(0.011));
      }
    }
  }

  @Test
  void the_page_tells_the_true_moment_of_the_still() throws IOException {
    long hip = Math.round(DemoFiles.pull().moment(JointId.HIP).size());
    assertThat(Files.readString(Path.of("README.md")))
        .contains("The true hip moment is " + hip + " N·m.");
  }
}
