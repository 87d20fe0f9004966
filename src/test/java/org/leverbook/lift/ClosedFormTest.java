package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.solve.Answer;
import org.leverbook.solve.Coordinates;
import org.leverbook.solve.Features;
import org.leverbook.solve.PoseSolver;
import org.leverbook.solve.Statements;

/** The general solver against the closed form of a hinge, which was written without it. */
class ClosedFormTest {

  private static final Body BODY = Person.of(Sex.MALE, kg(85), cm(178)).body();

  /**
   * What the closed form fixes, said one by one: both ankles and soles, hips at a height, a
   * straight spine, straight arms, hands on the bar, shoulders so far ahead of it.
   */
  @ParameterizedTest
  @ValueSource(doubles = {60, 63, 66, 69, 72})
  void the_same_conditions_give_the_same_pose(double hipHeight) {
    Pose closed = ClosedForm.usual(BODY).pose(hipHeight / 100, 0.053);
    Placement hinge = closed.placed();
    Statements s = new Statements(BODY, Coordinates.alike(BODY), Frame.WORLD);
    for (String held :
        List.of(
            "neck flexion",
            "elbow flexion",
            "ball of the foot flexion",
            "shoulder girdle rotation",
            "shoulder girdle abduction",
            "shoulder girdle flexion",
            "wrist flexion",
            "wrist abduction")) {
      s.exactly(held, 0);
    }
    s.exactly("low back flexion", 0).exactly("upper back flexion", 0);
    s.exactly("forearm rotation", closed.angle(JointId.FOREARM, Side.RIGHT, "rotation"));
    s.usually("knee flexion", 1, 0.05).usually("hip flexion", 1.5, 0.05);
    s.usually("pelvis lean", 1, 0.01).usually("shoulder flexion", 0.8, 0.05);
    point(s, hinge, JointId.ANKLE, "x y z");
    point(s, hinge, JointId.SHOULDER, "x");
    s.along(
        "the hips",
        "their height",
        Features.joint(BODY, "right hip"),
        new Vector3D(0, hipHeight / 100, 0),
        List.of(Vector3D.PLUS_J));
    s.at(
        "the right hand",
        "the bar",
        Features.point(BODY.place(Site.HAND, Side.RIGHT)),
        hinge.at(BODY.place(Site.HAND, Side.RIGHT)));
    direction(s, hinge, "right foot", Vector3D.PLUS_I);
    direction(s, hinge, "right foot", Vector3D.PLUS_J);
    direction(s, hinge, "right hand", Vector3D.PLUS_K);
    s.leans(
        "the knee",
        "the way of the foot",
        Features.direction(BODY, "right shank", Vector3D.PLUS_K),
        hinge.frame(BODY.tree().indexOf("right foot")).x(),
        0);
    Answer answer = new PoseSolver(s).solve();
    assertThat(answer.met()).as(answer.sentence()).isTrue();
    for (int i = 0; i < BODY.tree().angles(); i++) {
      // Conditions are met to 1e-7 m; the shortest lever is a hand's breadth.
      assertThat(answer.pose().angle(i)).as("angle " + i).isCloseTo(closed.angle(i), within(1e-5));
    }
  }

  private static void point(Statements s, Placement hinge, JointId joint, String along) {
    String name = joint.on(Side.RIGHT);
    List<Vector3D> directions =
        along.equals("x")
            ? List.of(Vector3D.PLUS_I)
            : List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K);
    s.along(name, "its place", Features.joint(BODY, name), hinge.centre(name), directions);
  }

  private static void direction(Statements s, Placement hinge, String segment, Vector3D local) {
    Vector3D way = hinge.frame(BODY.tree().indexOf(segment)).toWorld(local);
    s.points(segment, "its direction", Features.direction(BODY, segment, local), way);
  }
}
