package org.leverbook.figure;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Knows letters by their outlines.
 *
 * <p>XChart turns every text into an outline before any graphics sees it. The texts a chart can
 * hold are known, however: so the outline of each, in each of the chart's fonts, is made the way
 * XChart makes it, and a filled shape that equals one of them, point by point, is that text.
 */
final class LetterShapes {

  /** XChart turns the title of the upright axis by this before it takes the outline. */
  static final AffineTransform UPRIGHT = AffineTransform.getRotateInstance(-Math.PI / 2, 0, 0);

  /** What XChart takes where it sets colour scales and the numbers in a map's fields. */
  private static final FontRenderContext WHOLE_STEPS = new FontRenderContext(null, true, false);

  /**
   * What a shape says.
   *
   * @param text the words
   * @param font their font
   * @param upright whether they run upward
   */
  record Known(String text, Font font, boolean upright) {}

  private final Supplier<Set<String>> texts;
  private final Set<Font> fonts;
  private final Map<String, Known> outlines = new HashMap<>();
  private final Set<Known> learned = new HashSet<>();

  /**
   * LetterShapes of some texts.
   *
   * @param texts all that may be written; asked again when a shape is not known
   * @param fonts in which
   */
  LetterShapes(Supplier<Set<String>> texts, Set<Font> fonts) {
    this.texts = texts;
    this.fonts = Set.copyOf(fonts);
  }

  /**
   * What a shape says.
   *
   * @param shape as it is filled
   * @param context with which the graphics measures letters
   * @return empty where it is no text, or one that is not known
   */
  Optional<Known> known(Shape shape, FontRenderContext context) {
    String key = key(shape);
    if (!outlines.containsKey(key)) {
      learn(context);
    }
    return Optional.ofNullable(outlines.get(key));
  }

  private void learn(FontRenderContext context) {
    for (String text : texts.get()) {
      for (Font font : fonts) {
        Known level = new Known(text, font, false);
        if (learned.add(level)) {
          learn(level, context);
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
