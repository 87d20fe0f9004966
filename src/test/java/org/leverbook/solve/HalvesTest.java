package org.leverbook.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.body.Body;
import org.leverbook.body.Population;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Frame;

/** Solving with the right half alone finds what solving with both halves finds. */
class HalvesTest {

  static IntStream seeds() {
    return IntStream.range(0, 40);
  }

  private static Body body(int seed) {
    return Population.person(seed % 2 == 0 ? Sex.MALE : Sex.FEMALE, 77, seed).body();
  }

  /** Standing bent over with a weight in each hand, the balance over the middle of the feet. */
  private static Statements bentOver(Body body, double handHeight) {
    Statements s = new Statements(body, Coordinates.alike(body), Frame.WORLD);
    double hips = body.links().standingHipHeight();
    s.usually("pelvis up", 0.9 * hips, 0.01).usually("pelvis lean", 0.9, 0.05);
    s.usually("knee flexion", 0.5, 0.1).usually("hip flexion", 1.2, 0.05);
    s.usually("low back flexion", 0.1, 1).usually("upper back flexion", 0.1, 1);
    s.usually("shoulder flexion", 0.9, 0.05).usually("shoulder abduction", 0.1, 0.3);
    s.usually("elbow flexion", 0.1, 0.3);
    s.along(
        "the right foot",
        "its place",
        Features.joint(body, "right ankle"),
        new Vector3D(-0.05, body.links().footHeight(), 0.12),
        List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K));
    s.points(
        "the right foot",
        "flat",
        Features.direction(body, "right foot", Vector3D.PLUS_J),
        Vector3D.PLUS_J);
    List<Features.Carried> weights = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Feature hand = Features.point(body.place(Site.HAND, side));
      weights.add(new Features.Carried(20, hand));
      s.along(
          "the " + side.of("hand"),
          "its height",
          hand,
          new Vector3D(0, handHeight, 0),
          List.of(Vector3D.PLUS_J));
    }
    s.balanced(Vector3D.PLUS_I, 0.01, weights, List.of());
    return s;
  }

  /** The same, and something that speaks of left and right at once but weighs nothing. */
  private static Statements withBothHands(Statements s, Body body) {
    Feature apart =
        new Feature.Way(
            Features.point(body.place(Site.HAND, Side.LEFT)),
            Features.point(body.place(Site.HAND, Side.RIGHT)));
    s.rather(apart, Vector3D.PLUS_I, 0, 1e-9);
    return s;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void halfTheBodyIsEnoughWhereLeftAndRightGoAlike(int seed) {
    Body body = body(seed);
    double height = 0.3 + 0.01 * seed;
    assertThat(new PoseProblem(bentOver(body, height)).scene.halves).isNotNull();
    assertThat(new PoseProblem(withBothHands(bentOver(body, height), body)).scene.halves).isNull();
    Answer half = new PoseSolver(bentOver(body, height)).solve();
    Answer whole = new PoseSolver(withBothHands(bentOver(body, height), body)).solve();
    assertThat(half.met()).as(half.sentence()).isTrue();
    assertThat(whole.met()).as(whole.sentence()).isTrue();
    // Both stop where no step is larger than 1e-7; flat wishes leave some times that.
    for (int i = 0; i < half.values().length; i++) {
      assertThat(half.values()[i]).isCloseTo(whole.values()[i], within(1e-5));
    }
  }

  @Test
  void aBodyThatMayTurnIsPlacedWhole() {
    Body body = body(0);
    Statements turned =
        new Statements(body, Coordinates.alikeAnywhere(body), Frame.WORLD)
            .usually("pelvis up", 0.9, 1);
    assertThat(new PoseProblem(turned).scene.halves).isNull();
  }
}
