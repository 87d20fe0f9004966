package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leverbook.quantity.Refused;

class LabelPlacerTest {

  private static final Rectangle2D PAGE = new Rectangle2D.Double(0, 0, 600, 400);

  private static Label label(String words, double x, double y) {
    return new Label(
        List.of(words, "12.3 cm, 456 N·m"), 13, "#000000", List.of(new Point2D.Double(x, y)));
  }

  @Test
  void twelve_labels_for_one_point_all_find_room() {
    List<Label> crowd =
        IntStream.range(0, 12).mapToObj(i -> label("joint " + i, 300, 200)).toList();
    Line2D line = new Line2D.Double(300, 0, 300, 400);
    List<Label.Placed> placed =
        new LabelPlacer(PAGE, List.of(), List.of(line), new Area()).place(crowd);
    for (Label.Placed one : placed) {
      assertThat(PAGE.contains(one.box())).isTrue();
      assertThat(one.box().intersectsLine(line)).as("over the line").isFalse();
      assertThat(placed).filteredOn(p -> p != one).noneMatch(p -> p.box().intersects(one.box()));
    }
  }

  @Test
  void a_label_goes_beside_the_body_and_gets_a_leader() {
    Area body = new Area(new Rectangle2D.Double(200, 100, 200, 200));
    Label.Placed placed =
        new LabelPlacer(PAGE, List.of(), List.of(), body)
            .place(List.of(label("hip", 230, 200)))
            .get(0);
    assertThat(body.intersects(placed.box())).isFalse();
    assertThat(placed.needsLeader()).isTrue();
    assertThat(placed.box().getMaxX()).as("on the nearer side").isLessThanOrEqualTo(200);
  }

  @Test
  void a_page_without_room_is_refused() {
    Rectangle2D scrap = new Rectangle2D.Double(0, 0, 60, 20);
    assertThatThrownBy(
            () ->
                new LabelPlacer(scrap, List.of(), List.of(), new Area())
                    .place(List.of(label("hip", 10, 10))))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "There is no room left on the picture for the label \"hip\": show fewer arms, or make several pictures.");
  }

  @Test
  void reserved_room_is_enough_for_the_fonts_of_this_machine() {
    FontRenderContext context = new FontRenderContext(null, true, true);
    for (String text :
        List.of("low back (L5/S1)", "29.8 cm, 530 N·m", "bar 409, body weight 121 N·m", "hip°–%")) {
      for (int weight : List.of(Font.PLAIN, Font.BOLD)) {
        Font font = new Font(Font.SANS_SERIF, weight, 13);
        double needed = new TextLayout(text, font, context).getAdvance();
        assertThat(TextWidths.of(text, 13, weight == Font.BOLD))
            .as("%s in %s", text, font)
            .isGreaterThanOrEqualTo(needed);
      }
    }
  }

  @Test
  void long_texts_are_wrapped_and_no_word_is_lost() {
    String text = "The hips end at their published flexion; the spine takes up the rest.";
    List<String> lines = TextWidths.wrapped(text, 12, 150);
    assertThat(String.join(" ", lines)).isEqualTo(text);
    assertThat(lines).hasSizeGreaterThan(2).allMatch(l -> TextWidths.of(l, 12, false) <= 150);
    List<String> cut = TextWidths.wrapped("x".repeat(60), 12, 150);
    assertThat(String.join("", cut)).isEqualTo("x".repeat(60));
    assertThat(cut).hasSizeGreaterThan(1).allMatch(l -> TextWidths.of(l, 12, false) <= 150);
  }
}
