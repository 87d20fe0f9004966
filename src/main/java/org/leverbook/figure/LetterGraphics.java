package org.leverbook.figure;

import java.awt.Font;
import java.awt.Graphics;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.Optional;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;

/**
 * Writes letters as text although they arrive as outlines. What {@link LetterShapes} does not know
 * stays an outline, which looks the same and only cannot be searched.
 */
final class LetterGraphics extends SVGGraphics2D {

  private static final long serialVersionUID = 1L;

  private final transient LetterShapes letters;

  LetterGraphics(SVGGeneratorContext context, LetterShapes letters) {
    super(context, false);
    this.letters = letters;
  }

  private LetterGraphics(LetterGraphics parent) {
    super(parent);
    this.letters = parent.letters;
  }

  @Override
  public Graphics create() {
    return new LetterGraphics(this);
  }

  @Override
  public void fill(Shape shape) {
    Optional<LetterShapes.Known> known = letters.known(shape, getFontRenderContext());
    if (known.isEmpty()) {
      super.fill(shape);
      return;
    }
    Font fontBefore = getFont();
    AffineTransform placeBefore = getTransform();
    setFont(known.get().font());
    if (known.get().upright()) {
      transform(LetterShapes.UPRIGHT);
    }
    drawString(known.get().text(), 0f, 0f);
    setTransform(placeBefore);
    setFont(fontBefore);
  }
}
