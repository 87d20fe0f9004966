package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Picture;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.statics.Tempo;
import org.w3c.dom.Element;

/** What a page of pictures does with odd pictures, and with strips. */
class PicturePageInputTest {

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private static final BackSquat SQUAT = BackSquat.of(LIFTER).holding(Barbell.of(Units.kg(60)));

  private static final Position DOWN = SQUAT.finish();

  /** A picture of somebody else's making. */
  private record Foreign(String svgDocument, byte[] pngFile) implements Picture {

    static Foreign of(int pixels, String svg) {
      BufferedImage image = new BufferedImage(pixels, pixels, BufferedImage.TYPE_INT_RGB);
      return new Foreign(svg, RasterPainter.file(image));
    }

    @Override
    public String text() {
      return "foreign";
    }
  }

  private static SvgReader read(Picture page) {
    return SvgReader.of(page.svgDocument());
  }

  @Test
  void no_picture_too_many_and_what_has_none_are_refused_in_a_sentence() {
    assertThatThrownBy(PicturePage::beside)
        .isInstanceOf(Refused.class)
        .hasMessage(
            "There is no picture to put on the page: give some, as in beside(pull.start().picture(),"
                + " pull.finish().picture()).");
    Object[] many = new Object[49];
    Arrays.fill(many, DOWN);
    assertThatThrownBy(() -> PicturePage.beside(many))
        .hasMessage("A page takes up to 48 pictures, not 49: make several pages.");
    assertThatThrownBy(() -> PicturePage.beside(DOWN, "a text"))
        .hasMessage(
            "There is no picture of a text: a page takes pictures, positions, sweeps and charts.");
    assertThatThrownBy(() -> PicturePage.beside(DOWN, null))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("The picture is missing (null)");
    assertThatThrownBy(() -> PicturePage.inRows(3, DOWN, DOWN))
        .hasMessage("With 2 pictures there can be 1 to 2 rows, not 3.");
    assertThatThrownBy(() -> PicturePage.beside(DOWN, DOWN).called("one"))
        .hasMessage("There are 2 pictures but 1 names: give one name for each.");
    assertThatThrownBy(() -> PicturePage.beside(DOWN).titled(null))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("The title is missing (null)");
  }

  @Test
  void one_picture_is_a_page_without_any_title() {
    PicturePage page = PicturePage.below(DOWN);
    assertThat(page.text()).isEqualTo("page: 1 picture; save it with .save(\"page\")");
    assertThat(read(page).groups("panel")).hasSize(1);
    assertThat(read(page).all("title").get(0).getTextContent()).isEqualTo("1 picture");
  }

  @Test
  void forty_pictures_go_into_as_many_rows_as_readable_letters_ask_for() {
    Object[] forty = new Object[40];
    Arrays.fill(forty, DOWN);
    PicturePage page = PicturePage.beside(forty);
    assertThat(page.text()).contains("40 pictures in 8 rows, as letters");
    SvgReader svg = read(page);
    assertThat(svg.groups("panel")).hasSize(40);
    assertThat(svg.attribute("data-across")).isEqualTo(5);
  }

  @Test
  void names_and_titles_of_three_hundred_letters_stay_on_the_page() {
    String words = "a title that goes on ".repeat(15).substring(0, 300);
    String one = "x".repeat(300);
    PicturePage page =
        PicturePage.beside(DOWN, DOWN, DOWN).called(words, one, "").titled(one).captioned(words);
    SvgReader svg = read(page);
    double width = svg.attribute("width");
    assertThat(svg.all("text"))
        .allSatisfy(
            text -> {
              double size = Double.parseDouble(text.getAttribute("font-size"));
              boolean bold = !text.getAttribute("font-weight").isEmpty();
              double end =
                  Double.parseDouble(text.getAttribute("x"))
                      + TextWidths.of(text.getTextContent(), size, bold);
              assertThat(end).as(text.getTextContent()).isLessThanOrEqualTo(width);
            });
  }

  @Test
  void a_picture_of_ten_pixels_stays_small_beside_a_large_one() {
    String tiny =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10\" height=\"10\"><title>dot</title>"
            + "<circle id=\"c\" cx=\"5\" cy=\"5\" r=\"4\"/></svg>";
    SvgReader svg = read(PicturePage.beside(DOWN, Foreign.of(20, tiny)));
    Element inner = svg.all("svg").get(0);
    assertThat(inner.getAttribute("width")).isEqualTo("10");
    assertThat(inner.getAttribute("viewBox")).isEqualTo("0 0 10 10");
    assertThat(svg.all("circle").get(0).getAttribute("id")).isEqualTo("part1-c");
    assertThat(svg.all("desc").get(0).getTextContent()).contains("dot");
    assertThat(PicturePage.beside(DOWN, Foreign.of(20, tiny)).pngFile()).isNotEmpty();
  }

  @Test
  void what_brings_styles_or_scripts_cannot_reach_the_page() {
    String loud =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 40 30\"><style>text{fill:red}"
            + "</style><text>a</text></svg>";
    SvgReader svg = read(PicturePage.beside(DOWN, Foreign.of(20, loud)));
    assertThat(svg.all("style")).isEmpty();
    Element image = svg.all("image").get(0);
    assertThat(image.getAttribute("href")).startsWith("data:image/svg+xml;base64,");
    assertThat(image.getAttribute("width")).isEqualTo("40");
  }

  @Test
  void a_broken_svg_is_replaced_by_its_png_and_a_picture_broken_twice_is_refused() {
    String entity =
        "<!DOCTYPE svg [<!ENTITY e SYSTEM \"file:///etc/hostname\">]><svg"
            + " xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\"><text>&e;</text></svg>";
    for (String broken : List.of("<svg", "", entity)) {
      SvgReader svg = read(PicturePage.beside(Foreign.of(20, broken)));
      Element image = svg.all("image").get(0);
      assertThat(image.getAttribute("href")).startsWith("data:image/png;base64,");
      // Half of the twenty pixels of a PNG at twice the size.
      assertThat(image.getAttribute("width")).isEqualTo("10");
    }
    Foreign none = new Foreign("<svg", "no".getBytes(StandardCharsets.UTF_8));
    PicturePage page = PicturePage.beside(none);
    assertThatThrownBy(page::svgDocument)
        .isInstanceOf(Refused.class)
        .hasMessageContaining("cannot be read, neither as SVG nor as PNG: foreign.");
  }

  @Test
  void a_page_too_high_for_a_png_says_so() {
    String tall = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"800\" height=\"20000\"></svg>";
    PicturePage page = PicturePage.beside(Foreign.of(20, tall));
    assertThat(page.svgDocument()).contains("height=\"20000\"");
    assertThatThrownBy(page::pngFile)
        .isInstanceOf(Refused.class)
        .hasMessageContaining("too high for a PNG, which may be 13333");
  }

  @Test
  void a_strip_shows_a_lift_from_start_to_finish_and_the_same_world_in_all_frames() {
    SvgReader svg = read(PicturePage.strip(SQUAT, 5));
    List<Element> panels = svg.groups("panel");
    assertThat(panels.stream().map(panel -> panel.getAttribute("data-name")))
        .containsExactly(
            "start", "25 % of the way", "50 % of the way", "75 % of the way", "finish");
    List<Double> scales =
        panels.stream().map(p -> Double.valueOf(p.getAttribute("data-scale"))).distinct().toList();
    assertThat(scales).hasSize(1);
    assertThat(svg.words()).contains("Back squat");
    assertThatThrownBy(() -> PicturePage.strip(SQUAT, 1))
        .hasMessage("A strip has 2 to 12 frames, not 1.");
  }

  @Test
  void a_strip_of_a_movement_tells_the_times_and_why_a_frame_is_missing() {
    Hinge pull = Hinge.of(LIFTER).holding(Barbell.of(Units.kg(100)));
    Movement movement =
        Movement.of(
            "pull",
            Tempo.smooth(Units.seconds(1.5)),
            share -> {
              if (share > 0.9) {
                throw new Refused("Nobody gets there.");
              }
              return pull.hipHeight(Units.cm(60 + 10 * share)).start();
            });
    PicturePage strip = PicturePage.strip(movement, 3);
    SvgReader svg = read(strip);
    assertThat(svg.groups("panel")).hasSize(2);
    assertThat(svg.words()).contains("0.00 s", "0.75 s", "1.50 s", "Nobody gets there.");
    assertThat(strip.pngFile()).isNotEmpty();
  }
}
