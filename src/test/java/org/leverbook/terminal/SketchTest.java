package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import org.jline.utils.AttributedString;
import org.junit.jupiter.api.Test;

/** Pictures in letters. */
class SketchTest {

  private static BufferedImage diagonal(Color colour) {
    BufferedImage image = new BufferedImage(400, 400, BufferedImage.TYPE_INT_RGB);
    var graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, 400, 400);
    graphics.setColor(colour);
    graphics.setStroke(new BasicStroke(4));
    graphics.drawLine(100, 100, 300, 300);
    graphics.dispose();
    return image;
  }

  private static List<String> plain(List<AttributedString> lines) {
    return lines.stream().map(line -> line.toString().stripTrailing()).toList();
  }

  @Test
  void a_line_from_corner_to_corner_runs_from_the_first_cell_to_the_last_without_a_gap() {
    List<String> lines = plain(Sketch.of(diagonal(Color.BLACK), SvgTexts.NONE, 40, 10, false));

    assertThat(lines).hasSize(10);
    for (int row = 0; row < 10; row++) {
      // A cell is half as wide as high: two more columns a row.
      assertThat(lines.get(row).substring(2 * row)).as(lines + "").matches("[⠁-⣿]{2,3}");
    }
  }

  @Test
  void ink_keeps_its_colour_but_grey_takes_that_of_the_letters() {
    assertThat(
            Sketch.of(diagonal(new Color(200, 80, 0)), SvgTexts.NONE, 40, 10, true).get(0).toAnsi())
        .contains("\u001b[");
    assertThat(Sketch.of(diagonal(Color.DARK_GRAY), SvgTexts.NONE, 40, 10, true).get(0).toAnsi())
        .doesNotContain("\u001b[");
  }

  @Test
  void texts_are_written_as_texts_and_none_covers_another() {
    SvgTexts texts =
        SvgTexts.of(
            "<svg width=\"400\" height=\"400\"><text x=\"150\" y=\"150\" font-size=\"20\">hip &amp;"
                + " knee</text><text x=\"150\" y=\"152\" font-size=\"12\">44 cm</text>"
                + "<g transform=\"rotate(90)\"><text x=\"1\" y=\"1\">turned</text></g></svg>");

    String seen = String.join("\n", plain(Sketch.of(diagonal(Color.BLACK), texts, 40, 10, false)));

    assertThat(seen).contains("hip & knee").contains("44 cm").doesNotContain("turned");
  }

  @Test
  void an_empty_picture_gives_nothing() {
    BufferedImage empty = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB);
    assertThat(Sketch.of(empty, SvgTexts.NONE, 40, 10, true)).isEmpty();
  }
}
