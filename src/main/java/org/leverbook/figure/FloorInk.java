package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;
import org.leverbook.statics.Balance;

/** The floor, where the balance lies on it, and the scale bar. */
final class FloorInk {

  /** What the marks below the floor need, page units. */
  static final double DEPTH = 46;

  private static final double BAR = 0.2;

  private final Scene view;
  private final FigureStyle style;
  private final PageScale scale;
  private final double right;

  FloorInk(Scene view, FigureStyle style, PageScale scale, double right) {
    this.view = view;
    this.style = style;
    this.scale = scale;
    this.right = right;
  }

  Group ground() {
    if (!view.sight().level()) {
      return new Group(Map.of("class", "floor"), seenFromAbove());
    }
    double y = scale.floor();
    List<Ink> content = new ArrayList<>();
    content.add(Form.line(new Line2D.Double(60, y, right - 32, y), Pen.solid(style.quiet(), 1.4)));
    Path2D hatch = new Path2D.Double();
    for (double x = 66; x < right - 32; x += 14) {
      hatch.moveTo(x, y);
      hatch.lineTo(x - 5, y + 6);
    }
    content.add(Form.line(hatch, Pen.solid(style.quiet(), 0.6)));
    return new Group(Map.of("class", "floor"), content);
  }

  /** The floor as an area, and on it the outline of what carries. */
  private List<Ink> seenFromAbove() {
    List<Ink> content = new ArrayList<>();
    content.add(
        new Form(
            polygon(FloorPatch.corners(view)), style.farFlesh(), 0.5, Pen.solid(style.quiet(), 1)));
    view.position()
        .onGround()
        .filter(balance -> balance.polygon().size() > 2)
        .ifPresent(
            balance ->
                content.add(
                    Form.line(
                        polygon(
                            balance.polygon().stream()
                                .map(p -> view.seen(new Vector3D(p.getX(), 0, p.getY())))
                                .toList()),
                        new Pen(style.quiet(), 1, List.of(2.0, 3.0)))));
    return content;
  }

  private Path2D polygon(List<Vector2D> corners) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < corners.size(); i++) {
      Point2D corner = scale.onPage(corners.get(i));
      if (i == 0) {
        path.moveTo(corner.getX(), corner.getY());
      } else {
        path.lineTo(corner.getX(), corner.getY());
      }
    }
    path.closePath();
    return path;
  }

  Group marks() {
    List<Ink> content = new ArrayList<>();
    double y = scale.bottom();
    double length = BAR * scale.perMetre();
    double left = right - 32 - length;
    Path2D bar = new Path2D.Double();
    bar.moveTo(left, y + 20);
    bar.lineTo(left, y + 28);
    bar.moveTo(left, y + 24);
    bar.lineTo(left + length, y + 24);
    bar.moveTo(left + length, y + 20);
    bar.lineTo(left + length, y + 28);
    content.add(Form.line(bar, Pen.solid(style.quiet(), 1.4)));
    content.add(text("20 cm", left, y + 42));
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", "balance");
    view.position()
        .onGround()
        .ifPresent(
            b -> {
              if (view.sight().level()) {
                pressure(b, left, content, attributes);
              } else {
                content.add(onFloor(b));
              }
            });
    return new Group(attributes, content);
  }

  /** The mark under the floor where its push acts. */
  private void pressure(
      Balance balance, double left, List<Ink> content, Map<String, String> attributes) {
    double y = scale.floor();
    Point2D at = scale.onPage(new Vector2D(view.seen(balance.centreOfPressure()).getX(), 0));
    Path2D mark = new Path2D.Double();
    mark.moveTo(at.getX(), y + 1);
    mark.lineTo(at.getX() - 6, y + 13);
    mark.lineTo(at.getX() + 6, y + 13);
    mark.closePath();
    content.add(new Form(mark, style.ink(), 1, Pen.solid(style.paper(), 1)));
    String words = view.sight().fromSide() ? words(balance) : "floor's push";
    double width = TextWidths.of(words, style.caption(), false);
    double x = Math.max(60, Math.min(at.getX() - width / 2, left - 12 - width));
    content.add(text(words, x, y + 28));
    attributes.put("data-centre-of-pressure-x", SvgWriter.number(at.getX()));
  }

  /** A ring with a dot where the floor's push acts, seen from above. */
  private Ink onFloor(Balance balance) {
    Vector2D at = scale.centred(view.seen(balance.centreOfPressure()));
    return new Group(
        Map.of("class", "push"),
        List.of(
            new Form(Curves.disc(at, 6), style.paper(), 1, Pen.solid(style.ink(), 1.4)),
            Form.filled(Curves.disc(at, 2), style.ink())));
  }

  private static String words(Balance balance) {
    String share = String.format(Locale.ROOT, "%.0f %%", 100 * balance.shareOfFoot());
    if (!balance.held()) {
      return "out of balance: the floor would have to push at "
          + share
          + (balance.feet() ? " of the foot" : " of what carries, from behind");
    }
    return balance.feet()
        ? "floor's push: " + share + " of the foot from the heel"
        : "push of what carries: " + share + " from behind";
  }

  private Words text(String words, double x, double y) {
    return new Words(style.sentence(words), x, y, style.caption(), false, style.quiet(), false);
  }
}
