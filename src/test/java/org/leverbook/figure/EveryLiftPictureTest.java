package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.lift.Library;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.statics.View;
import org.w3c.dom.Element;

/** Reads the picture of every lift from three sides, at its start and its finish, as a page. */
class EveryLiftPictureTest {

  private static final Person MAN = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
  private static final List<View> VIEWS = List.of(View.SIDE, View.FRONT, View.TOP);

  /** Page numbers have three decimals, so a length read back from two points is good to this. */
  private static final double ROUNDING = 0.002;

  /** Below this the view need not tell that it hides some of an arm, metres. */
  private static final double TOLD = 0.005;

  /** What the accessibility guidelines ask of small text (WCAG 2.1, criterion 1.4.3). */
  private static final double CONTRAST = 4.5;

  @TestFactory
  Stream<DynamicTest> pictures_of() {
    return Library.of(MAN).lifts().stream()
        .map(lift -> DynamicTest.dynamicTest(lift.name(), () -> pictures(lift)));
  }

  @Test
  void the_library_is_not_empty() {
    assertThat(Library.of(MAN).lifts()).hasSizeGreaterThan(35);
  }

  private static void pictures(Lift<?> lift) {
    int texts = 0;
    for (Position position : List.of(lift.start(), lift.finish())) {
      for (View view : VIEWS) {
        SvgReader svg = SvgReader.of(position.seenFrom(view).picture().svgDocument());
        String name = position.name() + ", " + view;
        arms(svg, name, view);
        labels(svg, name);
        texts += texts(svg, name);
      }
    }
    assertThat(texts).as("lines of text looked at").isGreaterThan(60);
  }

  private static void arms(SvgReader svg, String name, View view) {
    double scale = svg.attribute("data-scale");
    Element force = svg.groups("line-of-force").get(0);
    for (Element arm : svg.groups("arm")) {
      String what = name + ", " + arm.getAttribute("data-joint");
      Line2D drawn = line(arm, 1);
      double length = drawn.getP1().distance(drawn.getP2());
      assertThat(length).as(what).isCloseTo(scale * number(arm, "data-drawn-m"), within(ROUNDING));
      square(svg, arm, force, drawn, what);
      double told = number(arm, "data-arm-m");
      double space = number(arm, "data-arm-3d-m");
      if (view.equals(View.FRONT)) {
        assertThat(length / scale).as(what).isCloseTo(told, within(ROUNDING / scale));
      } else if (view.equals(View.TOP)) {
        assertThat(told).as(what).isEqualTo(space);
        // What a view shows of an arm is never longer than the arm.
        assertThat(length / scale).as(what).isLessThan(space + ROUNDING / scale);
        if (force.getAttribute("data-end-on").equals("true")) {
          assertThat(length / scale).as(what).isCloseTo(space, within(ROUNDING / scale));
        }
      }
      if (!view.equals(View.FRONT) && Math.abs(told - length / scale) > TOLD + ROUNDING / scale) {
        assertThat(svg.words())
            .as(what)
            .contains(
                String.format(
                    Locale.ROOT, "%.1f cm (drawn %.1f)", 100 * told, 100 * length / scale));
      }
    }
  }

  /** The arm ends on the line of force and is square to it, or ends on the ring of one end-on. */
  private static void square(SvgReader svg, Element arm, Element force, Line2D drawn, String what) {
    List<Element> own = new ArrayList<>(SvgReader.children(arm, "g"));
    own.removeIf(g -> !g.getAttribute("class").startsWith("own"));
    boolean endOn = force.getAttribute("data-end-on").equals("true");
    if (endOn || !own.isEmpty() && own.get(0).getAttribute("class").equals("own-ring")) {
      Rectangle2D ring = box(SvgReader.children(own.isEmpty() ? force : own.get(0), "path").get(0));
      Point2D centre = new Point2D.Double(ring.getCenterX(), ring.getCenterY());
      // Without a ring of its own its line is within 1.5 cm of the whole load's.
      double apart = own.isEmpty() ? 0.016 * svg.attribute("data-scale") : 5 * ROUNDING;
      assertThat(drawn.getP2().distance(centre)).as(what).isLessThan(apart);
      return;
    }
    Line2D line = line(own.isEmpty() ? force : own.get(0), 0);
    double apart = own.isEmpty() ? 0.016 * svg.attribute("data-scale") : 5 * ROUNDING;
    assertThat(line.ptLineDist(drawn.getP2())).as(what).isLessThan(apart);
    double length = drawn.getP1().distance(drawn.getP2());
    double other = line.getP1().distance(line.getP2());
    double cosine =
        ((drawn.getX2() - drawn.getX1()) * (line.getX2() - line.getX1())
                + (drawn.getY2() - drawn.getY1()) * (line.getY2() - line.getY1()))
            / Math.max(1e-9, length * other);
    assertThat(cosine)
        .as("%s: cosine of the angle", what)
        .isCloseTo(0, within(ROUNDING / Math.max(ROUNDING, length) + ROUNDING / other));
  }

  private static void labels(SvgReader svg, String name) {
    Rectangle2D page =
        new Rectangle2D.Double(0, 0, svg.attribute("width"), svg.attribute("data-floor-y"));
    List<Rectangle2D> boxes = new ArrayList<>();
    for (Element label : svg.groups("label")) {
      double[] b = SvgReader.numbers(label.getAttribute("data-box"));
      Rectangle2D box = new Rectangle2D.Double(b[0], b[1], b[2], b[3]);
      assertThat(page.contains(box)).as("%s in %s", box, name).isTrue();
      assertThat(boxes).as(name).noneMatch(box::intersects);
      boxes.add(box);
    }
    List<Rectangle2D> joints = new ArrayList<>();
    svg.groups("joints")
        .forEach(g -> SvgReader.children(g, "path").forEach(p -> joints.add(box(p))));
    for (Element arm : svg.groups("arm")) {
      Point2D joint = line(arm, 1).getP1();
      joints.add(new Rectangle2D.Double(joint.getX() - 4, joint.getY() - 4, 8, 8));
    }
    for (Rectangle2D joint : joints) {
      assertThat(boxes)
          .as("%s: a label over the joint at %s", name, joint)
          .noneMatch(joint::intersects);
    }
  }

  private static int texts(SvgReader svg, String name) {
    Color darkest = darkest();
    List<Element> onLabels =
        svg.groups("label").stream().flatMap(g -> SvgReader.children(g, "text").stream()).toList();
    for (Element text : svg.all("text")) {
      double size = number(text, "font-size");
      boolean bold = text.getAttribute("font-weight").equals("bold");
      double left = number(text, "x");
      String words = text.getTextContent();
      assertThat(left).as(words).isNotNegative();
      assertThat(left + TextWidths.of(words, size, bold))
          .as("%s: %s", name, words)
          .isLessThanOrEqualTo(svg.attribute("width"));
      assertThat(number(text, "y") + 0.25 * size)
          .as(words)
          .isBetween(size, svg.attribute("height"));
      Color ground = onLabels.contains(text) ? darkest : Color.WHITE;
      assertThat(contrast(Color.decode(text.getAttribute("fill")), ground))
          .as("%s: contrast of %s", name, words)
          .isGreaterThanOrEqualTo(CONTRAST);
    }
    return svg.all("text").size();
  }

  /** The darkest filled area a label may lie on, a cushion, under the label's own ground. */
  private static Color darkest() {
    Color cushion = over(Color.WHITE, Color.decode(FigureStyle.ARTICLE.metal()), 0.35);
    return over(cushion, Color.decode(FigureStyle.ARTICLE.paper()), 0.82);
  }

  private static Color over(Color below, Color above, double opacity) {
    return new Color(
        mixed(below.getRed(), above.getRed(), opacity),
        mixed(below.getGreen(), above.getGreen(), opacity),
        mixed(below.getBlue(), above.getBlue(), opacity));
  }

  private static int mixed(int below, int above, double opacity) {
    return (int) Math.round(below + opacity * (above - below));
  }

  /** Contrast of two colours (WCAG 2.1, definitions of contrast ratio and relative luminance). */
  private static double contrast(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed())
        + 0.7152 * linear(colour.getGreen())
        + 0.0722 * linear(colour.getBlue());
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  private static Line2D line(Element group, int path) {
    double[] n = numbers(SvgReader.children(group, "path").get(path));
    return new Line2D.Double(n[0], n[1], n[2], n[3]);
  }

  private static double[] numbers(Element path) {
    return SvgReader.numbers(path.getAttribute("d"));
  }

  /** Around the corners and control points of a path. */
  private static Rectangle2D box(Element path) {
    double[] n = numbers(path);
    Rectangle2D box = new Rectangle2D.Double(n[0], n[1], 0, 0);
    for (int i = 2; i + 1 < n.length; i += 2) {
      box.add(n[i], n[i + 1]);
    }
    return box;
  }
}
