package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Picture;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Tempo;
import org.leverbook.study.Comparison;
import org.leverbook.study.Grid;
import org.leverbook.study.Span;
import org.leverbook.study.Sweep;

/** Names of 300 letters: nothing leaves the picture, and the description tells them whole. */
class LongNamesTest {

  private static final String SENTENCE = "a long label of a lift ".repeat(14).strip();
  private static final String ONE_WORD = "W".repeat(300);

  private static Hinge pull() {
    return Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178)))
        .holding(Barbell.of(Units.kg(100)));
  }

  private static Movement movement(String name) {
    return Movement.of(
        name, Tempo.smooth(Units.seconds(1)), s -> pull().hipHeight(Units.cm(60 + 6 * s)).start());
  }

  private static List<Picture> pictures(String name) {
    return List.of(
        movement(name).at(Units.seconds(0.3)).picture(),
        Comparison.of(
                pull().hipHeight(Units.cm(60)).start(), pull().hipHeight(Units.cm(66)).start())
            .called(name, "short")
            .picture(),
        Sweep.over(name, Units.cm(54), Units.cm(70), 4, h -> pull().hipHeight(h).start())
            .plot(JointId.HIP),
        Sweep.over(
                "hips",
                List.of(name, "short"),
                n -> pull().hipHeight(Units.cm(n.equals(name) ? 60 : 66)).start())
            .plot(JointId.HIP),
        Grid.over(
                Span.of(name, Units.cm(56), Units.cm(70), 3),
                Span.of("bar", Units.kg(60), Units.kg(100), 3),
                (h, m) -> pull().holding(Barbell.of(m)).hipHeight(h).start())
            .plot(JointId.HIP));
  }

  @ParameterizedTest
  @ValueSource(strings = {"words", "W"})
  void everything_stays_inside_the_picture(String kind) throws Exception {
    String name = kind.equals("W") ? ONE_WORD : SENTENCE;
    for (Picture picture : pictures(name)) {
      Drawing drawing =
          picture instanceof ChartPicture chart
              ? ChartInk.drawing(chart)
              : ((Drawn) picture).drawing();
      List<String> words = new ArrayList<>();
      inside(drawing, drawing.content(), words);
      assertThat(words).hasSizeGreaterThan(8);
      // A sweep over things tells their names by the first 60 letters.
      boolean things = picture.description().startsWith("Moment by hips");
      assertThat(picture.description())
          .as("told whole")
          .containsIgnoringCase(things ? name.substring(0, 40) : name);
      assertThat(picture.pdfFile()).isNotEmpty();
      assertThat(ImageIO.read(new java.io.ByteArrayInputStream(picture.pngFile())).getHeight())
          .isEqualTo((int) Math.ceil(2 * drawing.height()));
    }
  }

  private static void inside(Drawing page, List<Ink> content, List<String> seen) {
    for (Ink ink : content) {
      if (ink instanceof Ink.Group group) {
        inside(page, group.content(), seen);
      } else if (ink instanceof Ink.Words words) {
        seen.add(words.words());
        assertThat(words.x()).as(words.words()).isNotNegative();
        assertThat(words.x() + width(words)).as(words.words()).isLessThanOrEqualTo(page.width());
        assertThat(words.y()).as(words.words()).isBetween(words.size(), page.height());
      } else if (ink instanceof Ink.Upward upward) {
        seen.add(upward.words().words());
        assertThat(upward.words().y()).isLessThanOrEqualTo(page.height());
        assertThat(upward.words().y() - width(upward.words()))
            .as(upward.words().words())
            .isNotNegative();
      }
    }
  }

  /** As it is painted. */
  private static double width(Ink.Words words) {
    return new java.awt.font.TextLayout(
            words.words(),
            Fonts.of(words.words(), words.size(), words.bold()),
            new java.awt.font.FontRenderContext(null, true, true))
        .getAdvance();
  }

  @Test
  void a_name_that_is_cut_keeps_its_unit() {
    ChartPicture plot = (ChartPicture) pictures(SENTENCE).get(2);
    List<String> words =
        ChartInk.drawing(plot).content().stream()
            .filter(Ink.Words.class::isInstance)
            .map(ink -> ((Ink.Words) ink).words())
            .toList();
    assertThat(words).anyMatch(w -> w.startsWith("a long label") && w.endsWith("… (cm)"));
    assertThat(plot.charts().get(0).getXAxisTitle()).as("given back").isEqualTo(SENTENCE + " (cm)");
  }
}
