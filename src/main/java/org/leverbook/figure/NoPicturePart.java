package org.leverbook.figure;

import java.util.List;

/** The place of a picture that could not be, with the reason. */
final class NoPicturePart extends PagePart {

  private static final double LEAST = 150;

  private final String reason;

  NoPicturePart(String reason, String name, FigureStyle style) {
    super(name, style, LEAST);
    this.reason = reason;
  }

  @Override
  double least() {
    return LEAST;
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
  String told() {
    return named("No picture: " + reason);
  }
}
