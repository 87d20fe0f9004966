package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.body.Population;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.quantity.Units;
import org.leverbook.study.Claim;
import org.leverbook.study.ClaimAnswer;

class ClaimPictureTest {

  private static ClaimAnswer answer;

  @BeforeAll
  static void answerOnce() {
    answer = over(70);
  }

  private static ClaimAnswer over(double kilograms) {
    return Claim.of("the lifter weighs more than that")
        .margin("kg", p -> Si.kilograms(p.body().person().mass()) - kilograms)
        .over(
            IntStream.range(0, 120).mapToObj(ClaimPictureTest::person).toList(),
            who -> Hinge.of(who).holding(Barbell.of(Units.kg(60))).start());
  }

  private static Person person(int i) {
    return Population.person(i % 2 == 0 ? Sex.MALE : Sex.FEMALE, 7, i);
  }

  @Test
  void it_says_in_words_how_often_the_claim_holds_and_what_separates() throws Exception {
    String svg = answer.picture().svgDocument();
    assertThat(svg)
        .contains("The lifter weighs more than that")
        .contains("Holds in " + answer.shareText() + " of 120 cases.")
        .contains("holds: " + answer.holding(), "does not: " + answer.exceptions())
        .contains("margin (kg), more than zero where the claim holds")
        .contains("per cent that hold, by body mass (kg): each bar up to …")
        .contains(Caution.TEXT);
    assertThat(ImageIO.read(new ByteArrayInputStream(answer.picture().pngFile()))).isNotNull();
  }

  @Test
  void bars_left_and_right_of_zero_have_the_two_colours() {
    String svg = answer.picture().svgDocument();
    assertThat(svg)
        .contains(FigureStyle.ARTICLE.tone(Tint.HOLDS))
        .contains(FigureStyle.ARTICLE.tone(Tint.FAILS));
    String all = over(1).picture().svgDocument();
    assertThat(all).contains("holds: 120", "does not: 0");
  }

  @Test
  void shares_alone_can_be_drawn_where_something_separates_them() {
    assertThat(answer.sharesPicture().svgDocument())
        .contains("per cent that hold, by body mass (kg)")
        .doesNotContain("margin (kg)");
    assertThatThrownBy(() -> over(1).sharesPicture())
        .isInstanceOf(Refused.class)
        .hasMessageContaining("120 of 120 cases hold, and no input tells them apart.");
  }
}
