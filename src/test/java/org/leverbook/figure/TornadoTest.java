package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.statics.Position;
import org.leverbook.study.Doubt;
import org.leverbook.study.Sensitivity;
import org.w3c.dom.Element;

class TornadoTest {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));

  private static final Sensitivity FOUND =
      Doubt.of(Hinge.of(LIFTER).holding(Barbell.of(kg(140))).hipHeight(cm(58)), Hinge::start)
          .draws(150)
          .sensitivity(JointId.L5_S1);

  private static SvgReader drawn() {
    return SvgReader.of(FOUND.picture().svgDocument());
  }

  @Test
  void the_strongest_input_stands_on_top() {
    List<String> inputs = drawn().all("g").stream().map(g -> g.getAttribute("data-input")).toList();
    List<String> strongest = FOUND.moving().stream().limit(14).map(Sensitivity.Row::input).toList();
    assertThat(inputs).isEqualTo(strongest).hasSize(14);
  }

  @Test
  void every_text_stands_on_the_page_and_none_on_another() {
    apart(drawn());
  }

  @Test
  void a_long_name_is_cut_and_an_end_that_cannot_be_held_is_told() {
    Position start = Hinge.of(LIFTER).holding(Barbell.of(kg(140))).start();
    Sensitivity found =
        Doubt.of(
                LIFTER,
                (who, draw) -> {
                  var bar =
                      draw.around(
                          "the bar that the club weighed on kitchen scales " + "long ".repeat(9),
                          kg(140),
                          kg(2));
                  if (Si.kilograms(bar) > 143) {
                    throw new Refused("The rack gives way.");
                  }
                  return start.without("bar").with(Barbell.of(bar));
                })
            .only("kitchen")
            .draws(100)
            .sensitivity(JointId.L5_S1);
    SvgReader svg = SvgReader.of(found.picture().svgDocument());
    apart(svg);
    List<String> texts = svg.all("text").stream().map(Element::getTextContent).toList();
    assertThat(texts).anyMatch(t -> t.startsWith("the bar that") && t.endsWith("…"));
    assertThat(texts).anyMatch(t -> t.endsWith("; cannot be held at 95 %"));
  }

  private static void apart(SvgReader svg) {
    List<Element> texts = svg.all("text");
    List<java.awt.geom.Rectangle2D> boxes =
        texts.stream()
            .map(
                t -> {
                  double size = Double.parseDouble(t.getAttribute("font-size"));
                  boolean bold = t.getAttribute("font-weight").equals("bold");
                  return (java.awt.geom.Rectangle2D)
                      new java.awt.geom.Rectangle2D.Double(
                          Double.parseDouble(t.getAttribute("x")),
                          Double.parseDouble(t.getAttribute("y")) - 0.72 * size,
                          TextWidths.of(t.getTextContent(), size, bold),
                          0.72 * size);
                })
            .toList();
    for (int i = 0; i < boxes.size(); i++) {
      assertThat(boxes.get(i).getMaxX())
          .as(texts.get(i).getTextContent())
          .isLessThanOrEqualTo(svg.attribute("width"));
      assertThat(boxes.get(i).getMinX()).isGreaterThanOrEqualTo(0);
      for (int k = 0; k < i; k++) {
        assertThat(boxes.get(i).intersects(boxes.get(k)))
            .as(texts.get(i).getTextContent() + " on " + texts.get(k).getTextContent())
            .isFalse();
      }
    }
  }

  @Test
  void it_tells_the_band_and_the_caution() {
    String svg = FOUND.picture().svgDocument();
    assertThat(svg).contains(FOUND.band().sentence()).contains(Caution.TEXT.substring(0, 40));
  }
}
