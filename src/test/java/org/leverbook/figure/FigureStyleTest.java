package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.display.Picture;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

class FigureStyleTest {

  private static final Pattern COLOUR = Pattern.compile("#[0-9a-f]{6}");

  private static final Path GERMAN = Path.of("notebooks", "german.txt");

  private static final List<FigureStyle> PRESETS =
      List.of(
          FigureStyle.ARTICLE,
          FigureStyle.SLIDE,
          FigureStyle.BLACK_AND_WHITE,
          FigureStyle.CLEAR_COLOURS);

  /** Of the usual reader, then protanopia, deuteranopia, tritanopia (Machado et al. 2009). */
  private static final double[][][] READERS = {
    {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
    {
      {0.152286, 1.052583, -0.204868},
      {0.114503, 0.786281, 0.099216},
      {-0.003882, -0.048116, 1.051998}
    },
    {
      {0.367322, 0.860646, -0.227968},
      {0.280085, 0.672501, 0.047413},
      {-0.011820, 0.042940, 0.968881}
    },
    {
      {1.255528, -0.076749, -0.178779},
      {-0.078411, 0.930809, 0.147602},
      {0.004733, 0.691367, 0.303900}
    }
  };

  private static Position start() {
    return Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178)))
        .holding(Barbell.of(Units.kg(100)))
        .start();
  }

  @AfterEach
  void back_to_the_usual_style() {
    FigureStyle.choose(FigureStyle.ARTICLE);
  }

  /** The distances are those that {@code Palettes} publishes, to their last digit. */
  @Test
  void readers_of_every_colour_vision_tell_the_colours_apart() {
    assertThat(leastDistance(Palettes.CALM)).isCloseTo(26.5, within(0.05));
    assertThat(leastDistance(Palettes.CLEAR)).isCloseTo(35.4, within(0.05));
  }

  @Test
  void text_and_lines_stand_out_from_the_paper_in_every_style() {
    for (FigureStyle style : PRESETS) {
      for (Tint tint : Tint.values()) {
        assertThat(Contrast.between(style.tone(tint), style.paper()))
            .as(tint.word())
            .isGreaterThanOrEqualTo(tint.least());
      }
      for (JointId joint : JointId.values()) {
        assertThat(Contrast.between(style.accent(joint).colour(), style.paper()))
            .as(joint.word())
            .isGreaterThanOrEqualTo(Contrast.OF_LINES);
      }
    }
    // W3C's own example from memory: #767676 is the lightest grey for text on white.
    assertThat(Contrast.between("#767676", "#ffffff")).isBetween(4.5, 4.6);
  }

  @Test
  void numbers_can_be_read_on_every_field_of_a_map_in_every_style() {
    for (FigureStyle style : PRESETS) {
      for (Color field : Bands.over(-57, 163, true, style).colours()) {
        String colour = String.format("#%06x", field.getRGB() & 0xffffff);
        assertThat(Contrast.between(style.ink(), colour)).isGreaterThanOrEqualTo(4.5);
      }
    }
  }

  @Test
  void a_picture_for_black_and_white_holds_greys_alone_and_dashes_tell_its_arms_apart() {
    Picture grey = start().picture().styled(FigureStyle.BLACK_AND_WHITE);
    Matcher colours = COLOUR.matcher(grey.svgDocument());
    int seen = 0;
    while (colours.find()) {
      Color colour = Color.decode(colours.group());
      assertThat(List.of(colour.getGreen(), colour.getBlue()))
          .as(colours.group())
          .containsOnly(colour.getRed());
      seen++;
    }
    assertThat(seen).isGreaterThan(20);
    List<FigureStyle.Accent> accents = FigureStyle.BLACK_AND_WHITE.accents(Plots.usual());
    assertThat(accents.stream().map(FigureStyle.Accent::dash).distinct()).hasSize(6);
    assertThat(accents.stream().map(FigureStyle.Accent::fill).distinct()).hasSize(6);
  }

  @Test
  void a_slide_has_larger_letters_and_wider_lines_and_the_first_picture_stays() {
    Picture article = start().picture();
    String before = article.svgDocument();
    Picture slide = article.styled(FigureStyle.SLIDE);
    assertThat(slide.svgDocument()).contains("font-size=\"26\"").contains("font-size=\"18\"");
    assertThat(before).contains("font-size=\"19\"").contains("stroke-width=\"1.4\"");
    assertThat(slide.svgDocument()).contains("stroke-width=\"2.24\"");
    assertThat(article.svgDocument()).isEqualTo(before);
    assertThat(slide.styled(FigureStyle.ARTICLE).svgDocument()).isEqualTo(before);
  }

  @Test
  void a_style_said_once_holds_for_all_pictures_until_another_is_said() {
    String usual = start().picture().svgDocument();
    FigureStyle.choose(FigureStyle.SLIDE);
    assertThat(start().picture().svgDocument()).contains("font-size=\"26\"");
    FigureStyle.choose(FigureStyle.ARTICLE);
    assertThat(start().picture().svgDocument()).isEqualTo(usual);
  }

  @Test
  void a_colour_of_ones_own_is_drawn_and_one_that_cannot_be_seen_is_refused() {
    FigureStyle own =
        FigureStyle.ARTICLE.withColour(JointId.HIP, "#7A3B00").withColour("body", "#fbe3cf");
    assertThat(start().picture().styled(own).svgDocument()).contains("#7a3b00", "#fbe3cf");
    assertThatThrownBy(() -> FigureStyle.ARTICLE.withColour(JointId.HIP, "#ffff00"))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "A line in #ffff00 on #ffffff has a contrast of 1.1 to 1, too little to be read: it"
                + " needs 3 to 1. Take a darker tone.");
    assertThatThrownBy(() -> FigureStyle.ARTICLE.withColour("paper", "#222222"))
        .hasMessageContaining("too little to be read")
        .hasMessageContaining("lighter");
    assertThatThrownBy(() -> FigureStyle.ARTICLE.withColour("skin", "#222222"))
        .hasMessageStartingWith("No part of a picture is called \"skin\"; there are paper, ink,");
    assertThatThrownBy(() -> FigureStyle.ARTICLE.withPalette("#123456", "red"))
        .hasMessage(
            "The colour of a palette is written as # and six digits, such as \"#00529c\", not as"
                + " \"red\".");
    assertThatThrownBy(() -> FigureStyle.ARTICLE.withLetters(Double.NaN))
        .isInstanceOf(Refused.class);
  }

  @Test
  void labels_speak_german_and_sentences_only_where_the_whole_of_one_is_known() {
    FigureStyle german = FigureStyle.ARTICLE.speaking(LabelWords.read(GERMAN.toString()));
    SvgReader svg = SvgReader.of(start().picture().styled(german).svgDocument());
    assertThat(svg.words())
        .contains("Hüfte (je Seite)", "Lendenwirbelsäule (L5/S1)", "Wirkungslinie: Hantel")
        .contains("Ein Lehrmodell, keine ärztliche oder sportliche Freigabe")
        .contains("Balance at 48 % of the foot from the heel")
        .doesNotContain("line of force: bar", Caution.TEXT);
    svg.groups("label")
        .forEach(
            label -> {
              double[] box = SvgReader.numbers(label.getAttribute("data-box"));
              assertThat(box[0]).isPositive();
              assertThat(box[0] + box[2]).isLessThan(svg.attribute("width"));
            });
  }

  @Test
  void the_longest_known_word_counts_and_parts_of_words_do_not() {
    LabelWords words =
        LabelWords.of(Map.of("arm", "Hebel", "arm of the load", "Lastarm", "hip", "Hüfte"));
    assertThat(words.label("arm of the load (cm)")).isEqualTo("Lastarm (cm)");
    assertThat(words.label("Arm against hips, forearm, hip"))
        .isEqualTo("Hebel against hips, forearm, Hüfte");
  }

  @Test
  void a_file_of_words_with_a_broken_line_says_which(@TempDir Path folder) throws Exception {
    Path file = Files.writeString(folder.resolve("w.txt"), "# remark\nhip = Hüfte\nknee Knie\n");
    assertThatThrownBy(() -> LabelWords.read(file.toString()))
        .isInstanceOf(Refused.class)
        .hasMessage(
            file + ", line 3: \"knee Knie\" has no =. A line is written as in: hip = Hüfte.");
    Files.writeString(file, "hip = \n");
    assertThatThrownBy(() -> LabelWords.read(file.toString())).hasMessageContaining("line 1");
    assertThatThrownBy(() -> LabelWords.read("missing.txt"))
        .hasMessageStartingWith("The words \"missing.txt\" cannot be read");
  }

  private static double leastDistance(List<FigureStyle.Accent> accents) {
    double least = Double.MAX_VALUE;
    for (int i = 0; i < accents.size(); i++) {
      for (int j = 0; j < i; j++) {
        for (double[][] reader : READERS) {
          double[] a = seen(accents.get(i).colour(), reader);
          double[] b = seen(accents.get(j).colour(), reader);
          least = Math.min(least, Math.hypot(a[0] - b[0], Math.hypot(a[1] - b[1], a[2] - b[2])));
        }
      }
    }
    return least;
  }

  /** L*a*b* of CIE 1976, white of D65. */
  private static double[] seen(String hex, double[][] reader) {
    Color colour = Color.decode(hex);
    double[] light = {
      Contrast.linear(colour.getRed()),
      Contrast.linear(colour.getGreen()),
      Contrast.linear(colour.getBlue())
    };
    double[] c = new double[3];
    for (int i = 0; i < 3; i++) {
      double sum = 0;
      for (int j = 0; j < 3; j++) {
        sum += reader[i][j] * light[j];
      }
      c[i] = Math.max(0, Math.min(1, sum));
    }
    double x = root((0.4124 * c[0] + 0.3576 * c[1] + 0.1805 * c[2]) / 0.9505);
    double y = root(0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2]);
    double z = root((0.0193 * c[0] + 0.1192 * c[1] + 0.9505 * c[2]) / 1.089);
    return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
  }

  private static double root(double share) {
    return share > 0.008856 ? Math.cbrt(share) : 7.787 * share + 16 / 116.0;
  }
}
