package org.leverbook.figure;

import java.awt.Font;
import java.awt.Graphics;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;

/**
 * Writes letters as text although they arrive as outlines.
 *
 * <p>XChart turns every text into an outline before any graphics sees it. The texts a chart can
 * hold are known, however: so the outline of each, in each of the chart's fonts, is made the way
 * XChart makes it, and a filled shape that equals one of them, point by point, is written as that
 * text. What is not recognised stays an outline, which looks the same and only cannot be searched.
 */
final class LetterGraphics extends SVGGraphics2D {

  private static final long serialVersionUID = 1L;

  /** XChart turns the title of the upright axis by this before it takes the outline. */
  private static final AffineTransform UPRIGHT =
      AffineTransform.getRotateInstance(-Math.PI / 2, 0, 0);

  /** What XChart takes where it sets colour scales and the numbers in a map's fields. */
  private static final FontRenderContext WHOLE_STEPS = new FontRenderContext(null, true, false);

  private record Known(String text, Font font, boolean upright) {}

  private final transient Supplier<Set<String>> texts;
  private final transient Map<String, Known> outlines;
  private final transient Set<Known> learned;
  private transient Set<Font> fonts = Set.of();

  LetterGraphics(SVGGeneratorContext context, Supplier<Set<String>> texts) {
    super(context, false);
    this.texts = texts;
    this.outlines = new HashMap<>();
    this.learned = new HashSet<>();
  }

  private LetterGraphics(LetterGraphics parent) {
    super(parent);
    this.texts = parent.texts;
    this.outlines = parent.outlines;
    this.learned = parent.learned;
    this.fonts = parent.fonts;
  }

  void setFonts(Set<Font> used) {
    fonts = Set.copyOf(used);
  }

  @Override
  public Graphics create() {
    return new LetterGraphics(this);
  }

  @Override
  public void fill(Shape shape) {
    Known known = known(shape);
    if (known == null) {
      super.fill(shape);
      return;
    }
    Font fontBefore = getFont();
    AffineTransform placeBefore = getTransform();
    setFont(known.font());
    if (known.upright()) {
      transform(UPRIGHT);
    }
    drawString(known.text(), 0f, 0f);
    setTransform(placeBefore);
    setFont(fontBefore);
  }

  private Known known(Shape shape) {
    String key = key(shape);
    if (!outlines.containsKey(key)) {
      learn();
    }
    return outlines.get(key);
  }

  private void learn() {
    for (String text : texts.get()) {
      for (Font font : fonts) {
        Known level = new Known(text, font, false);
        if (learned.add(level)) {
          learn(level, getFontRenderContext());
          learn(level, WHOLE_STEPS);
        }
      }
    }
  }

  private void learn(Known level, FontRenderContext context) {
    TextLayout layout = new TextLayout(level.text(), level.font(), context);
    outlines.put(key(layout.getOutline(null)), level);
    outlines.put(key(layout.getOutline(UPRIGHT)), new Known(level.text(), level.font(), true));
  }

  private static String key(Shape shape) {
    StringBuilder key = new StringBuilder();
    double[] at = new double[6];
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      Arrays.fill(at, 0);
      key.append(i.currentSegment(at)).append(Arrays.toString(at));
    }
    return key.toString();
  }
}
