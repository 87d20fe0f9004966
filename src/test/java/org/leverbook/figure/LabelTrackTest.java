package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.language.Vocabulary;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Units;
import org.leverbook.study.Sweep;

/** The labels of a moving picture can be read while it moves. */
class LabelTrackTest {

  private static final Person MAN = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
  private static final int FRAMES = 21;

  /**
   * Fixed on the page or fixed to its arm; an arm's middle goes less than this from frame to frame,
   * page units. More is a jump.
   */
  private static final double STEADY = 45;

  private static Lift<?> lift(String name) {
    return switch (name) {
      case "back squat" -> Vocabulary.backSquat(MAN);
      case "hinge" -> Vocabulary.hinge(MAN).holding(Vocabulary.barbell(Units.kg(100)));
      case "bench press" -> Vocabulary.benchPress(MAN);
      case "lateral raise" -> Vocabulary.lateralRaise(MAN);
      case "cable chop" -> Vocabulary.cableChop(MAN);
      case "leg press" -> Vocabulary.legPress(MAN);
      case "pull-up" -> Vocabulary.pullUp(MAN);
      default -> Vocabulary.hipThrust(MAN);
    };
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "back squat",
        "hinge",
        "bench press",
        "lateral raise",
        "cable chop",
        "leg press",
        "pull-up",
        "hip thrust"
      })
  void labels_never_overlap_never_leave_the_picture_and_hardly_ever_jump(String name) {
    MotionPage page =
        MotionPage.of(Sweep.through(lift(name), FRAMES), List.of(), FigureStyle.ARTICLE);
    int jumps = 0;
    int labels = 0;
    for (int i = 0; i < FRAMES; i++) {
      Map<String, Label.Placed> placed = page.stage().placed(i);
      labels = Math.max(labels, placed.size());
      List<Rectangle2D> boxes = new ArrayList<>();
      for (Map.Entry<String, Label.Placed> e : placed.entrySet()) {
        Rectangle2D box = e.getValue().box();
        assertThat(page.stageBox().contains(box)).as(name + " " + i + " " + e.getKey()).isTrue();
        assertThat(boxes).as(name + " " + i + " " + e.getKey()).noneMatch(box::intersects);
        boxes.add(box);
        Label.Placed before = i == 0 ? null : page.stage().placed(i - 1).get(e.getKey());
        if (before != null) {
          double moved =
              Math.hypot(before.box().getX() - box.getX(), before.box().getY() - box.getY());
          jumps += moved > STEADY ? 1 : 0;
        }
      }
    }
    assertThat(labels).as("the line of force at least").isPositive();
    assertThat(jumps)
        .as("jumps of " + labels + " labels in " + FRAMES + " frames")
        .isLessThanOrEqualTo(labels);
  }
}
