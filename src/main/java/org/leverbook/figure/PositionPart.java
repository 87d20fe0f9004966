package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.leverbook.body.JointId;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;

/** A position on a page of pictures, laid out anew for its width with letters of full size. */
final class PositionPart extends PagePart {

  private static final double LEAST = 150;
  private static final double TALLEST = 360;
  private static final double LARGEST = 330;

  /** Between the floor and the rows, for the marks below the floor, page units. */
  private static final double MARKS = 30;

  private static final double RULER = 0.2;

  private final Scene scene;
  private Rectangle2D window;
  private double perMetre;
  private boolean ruled = true;

  PositionPart(Scene scene, String name, FigureStyle style) {
    super(name, style, LEAST);
    this.scene = scene;
    this.window = panel().seen().orElseThrow();
  }

  Scene scene() {
    return scene;
  }

  /** Who lifts; the sources of the masses stand at the foot. */
  String lifter() {
    return Caption.person(scene).split("; masses:")[0];
  }

  private SidePanel panel() {
    return new SidePanel(called(), Optional.of(scene), "", style, width, List.of());
  }

  Optional<MomentBars.Told> told(JointId joint) {
    return panel().told(joint);
  }

  /** What of the world it shows, metres. */
  Rectangle2D window() {
    return window;
  }

  /** Shows the same piece of the world as others, so that one can be laid over the other. */
  void show(Rectangle2D shared) {
    window = shared;
  }

  /** Page units for one metre. */
  double perMetre() {
    return perMetre;
  }

  /** Takes a scale that it shares with others, whose ruler stands elsewhere. */
  void share(double scale) {
    perMetre = scale;
    ruled = false;
  }

  double width() {
    return width;
  }

  @Override
  double least() {
    return LEAST;
  }

  @Override
  void place(double given) {
    width = given;
    rescale();
  }

  /** Takes the largest scale that its own place allows. */
  void rescale() {
    double across = (width - 2 * SidePanel.PAD) / window.getWidth();
    perMetre = Math.min(LARGEST, Math.min(across, TALLEST / window.getHeight()));
  }

  @Override
  Stream<PositionPart> positions() {
    return Stream.of(this);
  }

  private TextBlock heading(PageKey key) {
    TextBlock heading = new TextBlock(width);
    heading.add(called(), style.label(), true, style.ink());
    if (key.lifter().isEmpty()) {
      heading.add(lifter(), style.caption(), false, style.quiet());
    }
    if (key.load().isEmpty()) {
      String load = Caption.capital(Caption.held(scene));
      heading.add(load, style.caption(), false, style.quiet());
    }
    if (!scene.position().held()) {
      String why = scene.position().holding().sentence();
      heading.add(why, style.caption(), false, style.ink());
    }
    return heading;
  }

  @Override
  double height(PageKey key) {
    return heading(key).height() + AIR + window.getHeight() * perMetre + below(key);
  }

  private static double below(PageKey key) {
    return MARKS + new PanelRows(key).height();
  }

  @Override
  void draw(List<Ink> page, double left, double top, double height, PageKey key) {
    page.addAll(heading(key).at(left, top));
    // The floors of a row are level, whatever stands above them.
    double floor = top + height - below(key);
    double roof = floor - window.getHeight() * perMetre;
    page.add(panel().body(left, roof, floor, perMetre, window.getCenterX(), key.accents()));
    if (ruled) {
      page.add(ruler(style, perMetre, left + width - RULER * perMetre, floor + 19, "20 cm", true));
    }
    page.add(new PanelRows(key).of(this, left, floor + MARKS, width));
  }

  /** The scale, with its words before or behind. */
  static Group ruler(
      FigureStyle style, double perMetre, double left, double y, String words, boolean before) {
    double length = RULER * perMetre;
    Path2D ends = new Path2D.Double();
    ends.moveTo(left, y - 4);
    ends.lineTo(left, y + 4);
    ends.moveTo(left + length, y - 4);
    ends.lineTo(left + length, y + 4);
    Pen pen = Pen.solid(style.quiet(), 1.4);
    double room = TextWidths.of(words, style.caption(), false) + 6;
    double x = before ? left - room : left + length + 8;
    List<Ink> content = new ArrayList<>();
    content.add(Form.line(ends, pen));
    content.add(Form.line(new Line2D.Double(left, y, left + length, y), pen));
    content.add(new Words(words, x, y + 4, style.caption(), false, style.quiet(), false));
    return new Group(Map.of("class", "ruler"), content);
  }

  @Override
  List<String> notes() {
    // Those of positions are told together: PageFoot.
    return List.of();
  }

  @Override
  String called() {
    return name.isEmpty() ? Caption.name(scene) : name;
  }

  @Override
  String told() {
    return called() + ". " + Caption.title(scene) + ". " + Caption.description(scene);
  }
}
