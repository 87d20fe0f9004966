package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Picture;
import org.leverbook.lift.Library;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/** All lifts to look at: {@code target/lifts-sheet/index.html} and {@code sheet.png}. */
class LiftSheetTest {

  private static final Path FOLDER = Path.of("target", "lifts-sheet").toAbsolutePath();

  private static final Library ALL = Library.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178)));

  private static void write(String name, String text) {
    OutputFolder.write(FOLDER.resolve(name).toString(), text);
  }

  @Test
  void every_lift_is_on_the_sheet_at_start_and_finish_with_its_moments() throws IOException {
    Picture sheet = ALL.picture();
    OutputFolder.write(FOLDER.resolve("sheet.png").toString(), sheet.pngFile(1600));
    SvgReader svg = SvgReader.of(sheet.svgDocument());
    List<String> names =
        svg.groups("panel").stream().map(p -> p.getAttribute("data-name")).toList();
    assertThat(names).hasSize(2 * ALL.lifts().size()).doesNotHaveDuplicates();
    for (Lift<?> lift : ALL) {
      String name = Caption.capital(lift.name());
      assertThat(names).contains(name + ", start", name + ", finish");
    }
    assertThat(sheet.description())
        .startsWith(ALL.lifts().size() + " lifts, start and finish. Start and finish of each")
        .contains("Back squat, start")
        .containsPattern("Conventional deadlift, start: L5/S1 [0-9]+ N·m, hip [0-9]+ N·m\\.");
    assertThat(FOLDER.resolve("sheet.png")).isNotEmptyFile();
  }

  @Test
  void the_index_holds_every_picture_with_its_description() {
    StringBuilder page = new StringBuilder();
    page.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    page.append("<title>All lifts, start and finish</title>\n<style>img{width:48%}</style>\n");
    page.append("</head>\n<body>\n<h1>All lifts, start and finish</h1>\n");
    int pictures = 0;
    for (Lift<?> lift : ALL) {
      page.append("<h2>").append(SvgWriter.escaped(Caption.capital(lift.name()))).append("</h2>\n");
      for (Position position : List.of(lift.start(), lift.finish())) {
        Picture picture = position.picture();
        String file = position.name().replaceAll("[^A-Za-z0-9]+", "-") + ".svg";
        write(file, picture.svgDocument());
        String alt = picture.description();
        assertThat(alt).as(lift.name()).contains("drawn to scale").contains("85.0 kg, 178.0 cm");
        page.append("<img src=\"").append(file).append("\" alt=\"");
        page.append(SvgWriter.escaped(alt)).append("\">\n");
        pictures++;
      }
    }
    write("index.html", page.append("</body>\n</html>\n").toString());
    assertThat(pictures).isEqualTo(2 * ALL.lifts().size());
    assertThat(FOLDER.toFile().list((f, n) -> n.toLowerCase(Locale.ROOT).endsWith(".svg")))
        .hasSizeGreaterThanOrEqualTo(pictures);
  }

  @Test
  void a_lift_one_cannot_get_into_keeps_its_place_with_the_reason() {
    Lift<?> squat = ALL.named("back squat");
    Library one = new Library(List.of(squat));
    assertThat(one.picture().description()).startsWith("Back squat, start and finish. ");
    assertThatThrownBy(() -> new Library(List.of()).picture())
        .isInstanceOf(Refused.class)
        .hasMessage("This library holds no lift, so there is nothing to draw.");
  }
}
