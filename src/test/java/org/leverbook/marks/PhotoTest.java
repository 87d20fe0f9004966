package org.leverbook.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.BarbellCurl;
import org.leverbook.lift.BenchPress;
import org.leverbook.lift.Deadlift;
import org.leverbook.lift.OverheadPress;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/** A photo with marks, as a coach works with it. Photos here are drawn from our own poses. */
class PhotoTest {

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
  private static final Barbell BAR = Barbell.of(Units.kg(30));

  @TempDir static Path folder;
  private static Position curl;
  private static Rendered oblique;

  @BeforeAll
  static void takePhotos() {
    curl = BarbellCurl.of(LIFTER).holding(BAR).middle();
    oblique = Rendered.of(curl, 25, 5, folder.resolve("curl.png"));
  }

  private static Photo marked() {
    return oblique.scaled(oblique.marked(0, 1));
  }

  @Test
  void an_oblique_view_is_told_with_its_angle_and_both_mirror_solutions() {
    Fit fit = oblique.told(marked()).fit(LIFTER);

    assertThat(fit.hasOther()).isTrue();
    Fit towards = fit.towardsCamera();
    Fit away = fit.awayFromCamera();
    assertThat(towards.offSquare().getValue().doubleValue()).isEqualTo(25, within(3.0));
    assertThat(away.offSquare().getValue().doubleValue()).isNegative();
    assertThat(towards.other().offSquare().getValue().doubleValue()).isNegative();
    assertThat(towards.text())
        .contains("not square on: the lifter is turned 2")
        .contains("towards the camera. Everything is computed in space.")
        .contains("The mirror solution, .other(), with the lifter turned", Caution.TEXT);
  }

  @Test
  void the_mirror_solution_turns_every_part_out_of_the_picture_the_other_way_or_names_it() {
    for (Position position :
        List.of(
            curl,
            OverheadPress.of(LIFTER).holding(BAR).middle(),
            Deadlift.of(LIFTER).holding(BAR).start())) {
      Rendered photo = Rendered.of(position, 25, 5, folder.resolve("curl.png"));
      Fit fit = photo.scaled(photo.marked(0, 1)).fit(LIFTER).towardsCamera();
      Fit other = fit.other();

      int turned = 0;
      for (int i = 0; i < fit.foreshortened().size(); i++) {
        Foreshortened here = fit.foreshortened().get(i);
        Foreshortened there = other.foreshortened().get(i);
        boolean told =
            String.join(" ", fit.notes()).contains("the " + here.name() + ".")
                || String.join(" ", fit.notes()).contains("the " + here.name() + ",");
        // By the depths of the fitted body, not of the marks: five degrees and less have no other
        // side.
        if (Math.abs(here.depth()) > here.length() * Math.sin(Math.toRadians(5))) {
          boolean otherSide = here.depth() * there.depth() <= 0;
          assertThat(otherSide).as(position.name() + ", " + here.name()).isNotEqualTo(told);
          turned += otherSide ? 1 : 0;
        }
      }
      assertThat(turned).as(position.name()).isPositive();
      assertThat(other.other().offSquare()).isEqualTo(fit.offSquare());
      boolean back = other.offSquare().getValue().doubleValue() < 0;
      assertThat(back)
          .as(position.name())
          .isNotEqualTo(String.join(" ", fit.notes()).contains("the lifter as a whole"));
    }
  }

  @Test
  void poses_that_fit_about_as_well_are_offered_with_what_is_different_in_them() {
    Position squat = BackSquat.of(LIFTER).holding(BAR).middle();
    Rendered photo = Rendered.of(squat, -40, 5, folder.resolve("curl.png"));
    Fit fit = photo.scaled(photo.marked(2.5, 3)).fit(LIFTER);

    assertThat(fit.solutions()).hasSizeGreaterThan(1);
    assertThat(fit.text())
        .contains("The marks fit about as well with right ")
        .contains(": .solutions().get(1) gives that pose.")
        .contains("A wide stance or grip must be told.");
    assertThat(fit.solutions().get(1).solutions())
        .extracting(Fit::offSquare)
        .contains(fit.offSquare());
  }

  @Test
  void a_part_that_looks_short_is_turned_out_of_the_picture_by_the_arc_cosine() {
    Fit fit = oblique.told(marked()).fit(LIFTER).towardsCamera();

    Foreshortened forearm =
        fit.foreshortened().stream().filter(f -> f.name().contains("forearm")).findFirst().get();
    assertThat(forearm.tilt())
        .isEqualTo(Math.acos(Math.min(1, forearm.seen() / forearm.length())), within(1e-12));
    // A forearm held level and forward is turned out as the lifter is.
    assertThat(Math.toDegrees(forearm.tilt())).isBetween(15.0, 35.0);
    assertThat(forearm.nearer()).isEqualTo("wrist");
  }

  @Test
  void the_moments_of_the_fitted_lifter_are_those_of_the_true_one() {
    Fit fit = oblique.told(marked()).fit(LIFTER).towardsCamera().holding(BAR);

    double found = fit.position().moment(JointId.ELBOW, Side.RIGHT).signed();
    assertThat(found).isEqualTo(curl.moment(JointId.ELBOW, Side.RIGHT).signed(), within(3.0));
  }

  @Test
  void a_lifter_seen_from_the_left_gives_the_same_angles() {
    Rendered left = Rendered.of(curl, Side.LEFT, 20, 5, folder.resolve("left.png"));
    Fit fit = left.told(left.scaled(left.marked(0, 1))).fit(LIFTER).towardsCamera();

    assertThat(fit.shown()).isEqualTo(Side.LEFT);
    assertThat(fit.offSquare().getValue().doubleValue()).isEqualTo(20, within(3.0));
    assertThat(Math.toDegrees(fit.pose().angle(JointId.ELBOW, Side.LEFT, "flexion")))
        .isEqualTo(
            Math.toDegrees(curl.placement().pose().angle(JointId.ELBOW, Side.LEFT, "flexion")),
            within(3.0));
  }

  @Test
  void a_lifter_on_a_bench_is_fitted_off_the_floor() {
    Position press = BenchPress.of(LIFTER).holding(BAR).finish();
    Rendered photo = Rendered.of(press, 10, 5, folder.resolve("press.png"));
    Fit fit =
        photo
            .scaled(photo.marked(0, 1))
            .offTheFloor()
            .gripWidth(
                Units.m(
                    press
                        .placement()
                        .centre("right grip")
                        .distance(press.placement().centre("left grip"))))
            .fit(LIFTER);

    double truth = press.placement().pose().angle(JointId.ELBOW, Side.RIGHT, "flexion");
    assertThat(Math.toDegrees(fit.pose().angle(JointId.ELBOW, Side.RIGHT, "flexion") - truth))
        .isBetween(-12.0, 12.0);
    // The trunk lies as it did.
    assertThat(fit.pose().rootFrame().y().dotProduct(press.placement().pose().rootFrame().y()))
        .isGreaterThan(Math.cos(Math.toRadians(12)));
  }

  @Test
  void the_scale_can_come_from_the_upright_shank() {
    Fit fit = oblique.marked(0, 1).scale(Part.SHANK).fit(LIFTER);

    double truth = curl.placement().pose().angle(JointId.ELBOW, Side.RIGHT, "flexion");
    double found = fit.pose().angle(JointId.ELBOW, Side.RIGHT, "flexion");
    assertThat(Math.toDegrees(found - truth)).isBetween(-12.0, 12.0);
  }

  @Test
  void the_photo_lies_below_the_drawing_pixel_by_pixel() throws IOException {
    Fit fit = oblique.told(marked()).fit(LIFTER).towardsCamera().holding(BAR);
    String svg = fit.picture().svgDocument();

    Matcher image = Pattern.compile("href=\"data:image/png;base64,([^\"]+)\"").matcher(svg);
    assertThat(image.find()).isTrue();
    var below = ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(image.group(1))));
    var original = ImageIO.read(oblique.file.toFile());
    assertThat(below.getWidth()).isEqualTo(original.getWidth());
    assertThat(below.getRGB(700, 500)).isEqualTo(original.getRGB(700, 500));
    assertThat(svg).contains("class=\"line-of-force\"", "class=\"arm\"", Caution.TEXT);
    var png = ImageIO.read(new ByteArrayInputStream(fit.picture().pngFile()));
    assertThat(png.getWidth()).isEqualTo(1800);
  }

  @Test
  void the_fitted_joints_are_drawn_where_the_marks_are() {
    Fit fit = oblique.told(marked()).fit(LIFTER).towardsCamera();

    for (Mark mark : fit.marks()) {
      var point = mark.landmark().on(fit.body(), mark.side());
      Vector2D drawn =
          fit.camera().project(fit.pose().placed().toWorld(point.segment(), point.local()));
      // Ten pixels are 3 cm here: shoulder and ear give way first.
      assertThat(drawn.distance(mark.pixel())).as(mark.name()).isLessThan(10);
    }
  }

  @Test
  void a_cable_drawn_in_the_photo_pulls_the_hands() {
    Photo photo = oblique.told(marked());
    Vector2D hand = oblique.pixel(Landmark.HAND, Side.RIGHT);
    Fit fit =
        photo
            .lineOfForce(
                hand.getX(), hand.getY(), hand.getX(), hand.getY() + 300, Units.newton(300))
            .fit(LIFTER)
            .towardsCamera();

    double weight = fit.holding(Barbell.of(Units.kg(30))).position().moment(JointId.ELBOW).size();
    assertThat(fit.position().moment(JointId.ELBOW).from("pull")).isNotZero();
    assertThat(weight).isGreaterThan(fit.position().moment(JointId.ELBOW).size());
  }

  @Test
  void what_is_missing_or_broken_is_told() throws IOException {
    Path broken = Files.writeString(folder.resolve("broken.png"), "not a picture");

    assertThatThrownBy(() -> Photo.of("nowhere.png"))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("There is no photo \"nowhere.png\" in ");
    assertThatThrownBy(() -> Photo.of(broken.toString()))
        .isInstanceOf(Refused.class)
        .hasMessageEndingWith(
            "is no picture that can be read here. Give a PNG, JPEG, GIF or BMP file.");
    assertThatThrownBy(() -> marked().mark("hip", 5000, 20))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The hip at pixel (5000, 20) is not in the photo, which is 1600 pixels wide and 1200"
                + " high.");
    assertThatThrownBy(() -> marked().mark("hipp", 50, 20))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("There is no landmark \"hipp\"; there are hip, knee, ankle");
    assertThatThrownBy(() -> oblique.marked(0, 1).fit(LIFTER))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("The photo has no scale yet.");
    assertThatThrownBy(
            () ->
                Photo.of(oblique.file.toString())
                    .seenFrom(Side.RIGHT)
                    .mark("hip", 10, 10)
                    .mark("ankle", 10, 90)
                    .fit(LIFTER))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith(
            "Of the right side these marks are missing: knee, shoulder, elbow, wrist or hand.");
  }

  @Test
  void a_mark_that_no_such_lifter_can_have_is_told_with_its_distance() {
    Vector2D knee = oblique.pixel(Landmark.KNEE, Side.RIGHT);
    Fit fit = marked().mark("knee", knee.getX() + 150, knee.getY() - 120).fit(LIFTER);

    assertThat(String.join("\n", fit.notes()))
        .containsPattern("The mark of the right [a-z]+ is \\d+ cm from where this lifter's");
  }
}
