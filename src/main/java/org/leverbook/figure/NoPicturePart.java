package org.leverbook.figure;

import java.util.List;
import java.util.stream.Stream;

/** The place of a picture that could not be, with the reason. */
final class NoPicturePart extends PagePart {

  private static final double LEAST = 150;

  private final String reason;
  private final String name;
  private final FigureStyle style;
  private double width = LEAST;

  NoPicturePart(String reason, String name, FigureStyle style) {
    this.reason = reason;
    this.name = name;
    this.style = style;
  }

  @Override
  double least() {
    return LEAST;
  }

  @Override
  void place(double given) {
    width = given;
  }

  @Override
  Stream<PositionPart> positions() {
    return Stream.empty();
  }

  private TextBlock words() {
    return new TextBlock(width)
        .add(name, style.label(), true, style.ink())
        .add(reason, style.caption(), false, style.ink());
  }

  @Override
  double height(PageKey key) {
    return words().height();
  }

  @Override
  void draw(List<Ink> page, double left, double top, double height, PageKey key) {
    page.addAll(words().at(left, top));
  }

  @Override
  List<String> notes() {
    return List.of();
  }

  @Override
  String called() {
    return name;
  }

  @Override
  String told() {
    return (name.isEmpty() ? "" : name + ". ") + "No picture: " + reason;
  }
}
