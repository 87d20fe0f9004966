package org.leverbook.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Where things appear in a picture, and back again. */
class CameraTest {

  /** Sums of products of numbers up to a few thousand: rounding. */
  private static final double ROUNDING = 1e-9;

  private static final Frame TILTED = Frame.aboutVertical(0.4).turning(Frame.leanedForward(0.2));

  private static final List<Camera> CAMERAS =
      List.of(
          new DistantCamera(TILTED, 230, new Vector2D(640, 500)),
          new NearCamera(TILTED.z().scalarMultiply(4), TILTED, 1200, new Vector2D(800, 600)));

  @Test
  void a_metre_forward_and_two_up_appear_to_the_right_and_above() {
    Camera camera = new DistantCamera(Frame.WORLD, 200, new Vector2D(500, 600));

    assertThat(camera.project(new Vector3D(1, 2, 5))).isEqualTo(new Vector2D(700, 200));
    assertThat(camera.perMetre(new Vector3D(1, 2, 5))).isEqualTo(200);
  }

  @Test
  void what_is_nearer_to_a_near_camera_appears_larger() {
    Camera camera =
        new NearCamera(new Vector3D(0, 1, 5), Frame.WORLD, 1000, new Vector2D(500, 500));

    // A metre at 5 m takes 200 pixels, at 4 m 250.
    assertThat(camera.project(new Vector3D(1, 1, 0)).getX()).isEqualTo(700, within(ROUNDING));
    assertThat(camera.project(new Vector3D(1, 1, 1)).getX()).isEqualTo(750, within(ROUNDING));
    assertThat(camera.perMetre(new Vector3D(3, 2, 1))).isEqualTo(250, within(ROUNDING));
  }

  @Test
  void a_place_lies_on_the_line_of_sight_of_its_pixel() {
    Random random = new Random(5);
    for (Camera camera : CAMERAS) {
      for (int i = 0; i < 100; i++) {
        Vector3D place = place(random);
        Vector2D pixel = camera.project(place);

        assertThat(camera.sight(pixel).miss(place)).isLessThan(ROUNDING);
        // Five centimetres across the sight, along the camera's own axes: 3-4-5.
        Vector3D aside = new Vector3D(1, place, 0.03, TILTED.x(), 0.04, TILTED.y());
        assertThat(camera.sight(pixel).miss(aside)).isGreaterThan(0.04).isLessThan(0.06);
        assertThat(camera.place(pixel, place).distance(place)).isLessThan(ROUNDING);
      }
    }
  }

  @Test
  void moved_with_the_scene_a_camera_sees_the_same() {
    Random random = new Random(6);
    Frame turn = Frame.aboutVertical(-1.1);
    Vector3D shift = new Vector3D(0.3, -0.2, 0.7);
    for (Camera camera : CAMERAS) {
      for (int i = 0; i < 100; i++) {
        Vector3D place = place(random);
        Vector2D again = camera.moved(turn, shift).project(turn.toWorld(place).add(shift));

        assertThat(again.distance(camera.project(place))).isLessThan(ROUNDING);
      }
    }
  }

  private static Vector3D place(Random random) {
    return new Vector3D(
        2 * random.nextDouble() - 1, 2 * random.nextDouble(), 2 * random.nextDouble() - 1);
  }
}
