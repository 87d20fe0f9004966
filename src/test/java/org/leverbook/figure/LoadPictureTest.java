package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Band;
import org.leverbook.load.Barbell;
import org.leverbook.load.Cable;
import org.leverbook.load.Cam;
import org.leverbook.load.Chains;
import org.leverbook.load.HandWeights;
import org.leverbook.load.LeverMachine;
import org.leverbook.load.Load;
import org.leverbook.load.PivotingBar;
import org.leverbook.load.Worn;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/** Every load can be seen in the picture, and what is slanted stays on the page. */
class LoadPictureTest {

  private static final Position EMPTY =
      Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178))).hipHeight(Units.cm(72)).start();

  private static final Map<String, Load> LOADS =
      Map.of(
          "cable", Cable.of(Units.kg(10), new Vector3D(0.9, 1.4, 0)),
          "band", Band.of(Vector3D.ZERO, Units.cm(10), Units.newton(100), Units.cm(40)),
          "dumbbell", HandWeights.one("dumbbell", Units.kg(10), Side.RIGHT),
          "kettlebell", HandWeights.pair("kettlebell", Units.kg(10)),
          "chains", Chains.of(Units.kg(4), Units.cm(150)),
          "machine", LeverMachine.of(new Vector3D(0.6, 0.8, 0), Units.kg(10), Units.cm(70)),
          "pivoting bar", PivotingBar.of(new Vector3D(1.2, 0, 0), Units.kg(5)),
          "belt", Worn.belt(Units.kg(20)));

  @Test
  void every_load_has_its_mark_and_its_name() {
    LOADS.forEach(
        (source, load) -> {
          String svg = EMPTY.with(load).picture().svgDocument();
          assertThat(svg)
              .as(source)
              .contains("data-source=\"" + source + "\"")
              .contains("class=\"load\"")
              .contains(load.description());
        });
  }

  @Test
  void a_cam_and_a_bar_on_the_back_can_be_drawn_too() {
    Load cam = LeverMachine.of(new Vector3D(0.6, 0.8, 0), Units.kg(10), Cam.round(Units.cm(10)));
    assertThat(EMPTY.with(cam).picture().svgDocument()).contains("over a cam");
    Barbell bar = Barbell.of(Units.kg(40)).on(Site.UPPER_BACK_HIGH);
    assertThat(EMPTY.with(bar).picture().svgDocument()).contains("class=\"bar\"");
  }

  @Test
  void a_line_is_cut_at_the_edge_of_its_box_and_keeps_its_direction() {
    Rectangle2D box = new Rectangle2D.Double(0, 0, 10, 10);
    Line2D cut = Curves.within(new Line2D.Double(-5, -5, 20, 20), box);
    assertThat(cut.getX1()).isCloseTo(0, within(1e-12));
    assertThat(cut.getX2()).isCloseTo(10, within(1e-12));
    assertThat(cut.getY2()).isCloseTo(10, within(1e-12));
    List<Line2D> inside = List.of(new Line2D.Double(1, 1, 9, 2), new Line2D.Double(5, 0, 5, 10));
    for (Line2D line : inside) {
      Line2D same = Curves.within(line, box);
      assertThat(same.getP1()).isEqualTo(line.getP1());
      assertThat(same.getP2()).isEqualTo(line.getP2());
    }
  }

  @Test
  void a_slack_band_is_said_to_pull_nothing() {
    Band slack = Band.of(Vector3D.ZERO, Units.cm(100), Units.newton(100), Units.cm(150));
    assertThat(EMPTY.with(slack).text())
        .contains("band 100 cm long, 20 N when stretched by 10 cm: slack, pulls nothing here");
    assertThat(EMPTY.with(slack).picture().svgDocument()).contains("class=\"load\"");
  }
}
