package org.leverbook.figure;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Shape;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/**
 * Keeps what is painted as ink: shapes as shapes, letters as text, all in page units. What a clip
 * cuts is cut here, so that no file needs to know of clips.
 */
final class InkGraphics extends AbstractGraphics2D {

  private static final Graphics2D SCREEN =
      new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();

  private static final double SEAM = 0.3;

  private final List<Ink> ink;
  private final LetterShapes letters;

  InkGraphics(LetterShapes letters) {
    super(false);
    this.gc = new GraphicContext();
    this.ink = new ArrayList<>();
    this.letters = letters;
  }

  private InkGraphics(InkGraphics parent) {
    super(parent);
    this.ink = parent.ink;
    this.letters = parent.letters;
  }

  /** All that was painted, the first at the back. */
  List<Ink> ink() {
    return List.copyOf(ink);
  }

  @Override
  public Graphics create() {
    return new InkGraphics(this);
  }

  @Override
  public void dispose() {
    // Holds nothing of the system.
  }

  @Override
  public void fill(Shape shape) {
    Optional<LetterShapes.Known> known = letters.known(shape, getFontRenderContext());
    Optional<Ink> words = known.flatMap(k -> words(k.text(), k.font(), k.upright(), 0, 0));
    if (words.isPresent()) {
      ink.add(words.get());
    } else {
      filled(onPage(shape));
    }
  }

  /** A rectangle stays one, so that it is known as a field of a map, or a bar. */
  private Shape onPage(Shape shape) {
    Shape onPage = getTransform().createTransformedShape(shape);
    boolean level = getTransform().getShearX() == 0 && getTransform().getShearY() == 0;
    return level && shape instanceof Rectangle2D ? onPage.getBounds2D() : onPage;
  }

  @Override
  public void draw(Shape shape) {
    Shape onPage = getTransform().createTransformedShape(shape);
    double scale = Math.sqrt(Math.abs(getTransform().getDeterminant()));
    if (!(getStroke() instanceof BasicStroke stroke)) {
      filled(getTransform().createTransformedShape(getStroke().createStrokedShape(shape)));
      return;
    }
    Rectangle2D bounds = onPage.getBounds2D();
    double wide = scale * stroke.getLineWidth();
    bounds.setFrame(
        bounds.getX() - wide,
        bounds.getY() - wide,
        bounds.getWidth() + 2 * wide,
        bounds.getHeight() + 2 * wide);
    boolean cut = clip().filter(clip -> !clip.contains(bounds)).isPresent();
    if (cut || opacity() < 1) {
      filled(getTransform().createTransformedShape(stroke.createStrokedShape(shape)));
    } else {
      ink.add(Ink.Form.line(onPage, pen(stroke, scale)));
    }
  }

  private Ink.Pen pen(BasicStroke stroke, double scale) {
    List<Double> dash = new ArrayList<>();
    if (stroke.getDashArray() != null) {
      for (float length : stroke.getDashArray()) {
        dash.add(scale * length);
      }
    }
    return new Ink.Pen(colour(), scale * stroke.getLineWidth(), dash);
  }

  private void filled(Shape onPage) {
    Shape left = onPage;
    Optional<Shape> clip = clip().filter(c -> !c.contains(onPage.getBounds2D()));
    if (clip.isPresent()) {
      Area area = new Area(onPage);
      area.intersect(new Area(clip.get()));
      left = area;
    }
    if (!left.getPathIterator(null).isDone() && opacity() > 0) {
      // Fields that touch would show a seam of paper between them.
      boolean field = left instanceof Rectangle2D || onPage instanceof Rectangle2D;
      Ink.Pen seam = field && opacity() == 1 ? Ink.Pen.solid(colour(), SEAM) : null;
      ink.add(new Ink.Form(left, colour(), opacity(), seam));
    }
  }

  private Optional<Shape> clip() {
    return Optional.ofNullable(getClip()).map(getTransform()::createTransformedShape);
  }

  /** A gradient counts as its first colour; charts of ours have none. */
  private Color paint() {
    return getPaint() instanceof Color colour ? colour : getColor();
  }

  private String colour() {
    return String.format(Locale.ROOT, "#%06x", paint().getRGB() & 0xffffff);
  }

  private double opacity() {
    double veil = getComposite() instanceof AlphaComposite alpha ? alpha.getAlpha() : 1;
    return veil * paint().getAlpha() / 255.0;
  }

  /** As text, unless it is turned, stretched or half seen through: then it stays a shape. */
  private Optional<Ink> words(String text, Font font, boolean upright, float x, float y) {
    AffineTransform place = getTransform();
    double scale = place.getScaleX();
    boolean plain =
        Math.abs(place.getShearX()) + Math.abs(place.getShearY()) < 1e-9
            && scale > 0
            && Math.abs(place.getScaleY() - scale) < 1e-9 * scale;
    if (!plain || opacity() < 1 || font.isItalic()) {
      return Optional.empty();
    }
    Point2D at = place.transform(new Point2D.Double(x, y), null);
    Ink.Words words =
        new Ink.Words(
            text, at.getX(), at.getY(), scale * font.getSize2D(), font.isBold(), colour(), false);
    return Optional.of(upright ? new Ink.Upward(words) : words);
  }

  @Override
  public void drawString(String text, float x, float y) {
    words(text, getFont(), false, x, y)
        .ifPresentOrElse(
            ink::add,
            () -> {
              if (!text.isBlank()) {
                outline(new TextLayout(text, getFont(), getFontRenderContext()), x, y);
              }
            });
  }

  @Override
  public void drawString(AttributedCharacterIterator text, float x, float y) {
    outline(new TextLayout(text, getFontRenderContext()), x, y);
  }

  private void outline(TextLayout text, float x, float y) {
    Shape letters = text.getOutline(AffineTransform.getTranslateInstance(x, y));
    filled(getTransform().createTransformedShape(letters));
  }

  @Override
  public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
    return drawImage(image, x, y, image.getWidth(null), image.getHeight(null), observer);
  }

  @Override
  public boolean drawImage(
      Image image, int x, int y, int width, int height, ImageObserver observer) {
    BufferedImage pixels =
        new BufferedImage(image.getWidth(null), image.getHeight(null), BufferedImage.TYPE_INT_ARGB);
    Graphics2D copy = pixels.createGraphics();
    copy.drawImage(image, 0, 0, null);
    copy.dispose();
    Shape frame = new Rectangle2D.Double(x, y, width, height);
    Rectangle2D on = getTransform().createTransformedShape(frame).getBounds2D();
    ink.add(new Ink.Photograph(pixels, on.getX(), on.getY(), on.getWidth(), on.getHeight()));
    return true;
  }

  @Override
  public void drawRenderedImage(RenderedImage image, AffineTransform place) {
    BufferedImage pixels =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_ARGB);
    Graphics2D copy = pixels.createGraphics();
    copy.drawRenderedImage(image, new AffineTransform());
    copy.dispose();
    InkGraphics placed = new InkGraphics(this);
    placed.transform(place);
    placed.drawImage(pixels, 0, 0, null);
  }

  @Override
  public void drawRenderableImage(RenderableImage image, AffineTransform place) {
    drawRenderedImage(image.createDefaultRendering(), place);
  }

  @Override
  public void copyArea(int x, int y, int width, int height, int dx, int dy) {
    throw new UnsupportedOperationException("Ink that was laid down stays where it is.");
  }

  @Override
  public void setXORMode(Color colour) {
    throw new UnsupportedOperationException("Ink covers; it does not invert.");
  }

  @Override
  public GraphicsConfiguration getDeviceConfiguration() {
    return SCREEN.getDeviceConfiguration();
  }

  @Override
  public FontMetrics getFontMetrics(Font font) {
    return SCREEN.getFontMetrics(font);
  }
}
