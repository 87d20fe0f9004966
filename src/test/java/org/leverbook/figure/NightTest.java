package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;

class NightTest {

  private static double onDarkPaper(String day) {
    double paper = Night.luminance(Color.decode(Night.of("#ffffff")));
    return Night.contrast(Night.luminance(Color.decode(Night.of(day))), paper);
  }

  @Test
  void black_on_white_has_the_contrast_that_the_guidelines_give() {
    assertThat(Night.contrast(Night.luminance(Color.BLACK), Night.luminance(Color.WHITE)))
        .isEqualTo(21);
  }

  @Test
  void paper_becomes_dark_and_every_text_and_every_joints_colour_stays_readable_on_it() {
    FigureStyle style = FigureStyle.ARTICLE;
    assertThat(Night.luminance(Color.decode(Night.of(style.paper())))).isLessThan(0.02);
    assertThat(onDarkPaper(style.ink())).isGreaterThan(10);
    assertThat(onDarkPaper(style.quiet())).isGreaterThan(4.5);
    for (JointId joint : JointId.values()) {
      assertThat(onDarkPaper(style.accent(joint).colour())).as(joint.word()).isGreaterThan(4.5);
    }
  }
}
