package org.leverbook.figure;

import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;

/**
 * Paints a drawing as a PDF of one page: lines stay lines, text stays text, its letters inside the
 * file. The same drawing gives the same bytes.
 */
final class PdfPainter {

  /** Points for one page unit: a CSS pixel is a 96th of an inch, a point a 72nd. */
  static final double POINTS = 0.75;

  private static final float HALO = 3;

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  private final PDDocument document;
  private final PDPageContentStream page;
  private final FigureStyle style;
  private final Map<Boolean, PDType0Font> faces;
  private final Map<Double, PDExtendedGraphicsState> veils = new HashMap<>();

  /** Times what a pen says; what a chart draws is as wide as it is to be. */
  private final double thick;

  private PdfPainter(
      PDDocument document,
      PDPageContentStream page,
      FigureStyle style,
      double thick,
      Map<Boolean, PDType0Font> faces) {
    this.thick = thick;
    this.faces = faces;
    this.document = document;
    this.page = page;
    this.style = style;
  }

  /** For a part of a page in a style of its own. */
  private PdfPainter(PdfPainter whole, FigureStyle style, double thick) {
    this(whole.document, whole.page, style, thick, whole.faces);
  }

  static byte[] pdf(Drawing drawing, FigureStyle style, double thick) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      // Otherwise the time of day would go into the file's number.
      document.setDocumentId(1L);
      float width = (float) (POINTS * drawing.width());
      float height = (float) (POINTS * drawing.height());
      PDPage sheet = new PDPage(new PDRectangle(width, height));
      document.addPage(sheet);
      PdfTold.tell(document, sheet, drawing);
      try (PDPageContentStream page = new PDPageContentStream(document, sheet)) {
        PdfTold.begin(page);
        float unit = (float) POINTS;
        page.transform(new Matrix(unit, 0, 0, -unit, 0, height));
        new PdfPainter(document, page, style, thick, new HashMap<>()).whole(drawing);
        PdfTold.end(page);
      }
      document.save(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return file.toByteArray();
  }

  private void whole(Drawing drawing) throws IOException {
    page.setNonStrokingColor(Color.decode(style.paper()));
    page.addRect(0, 0, (float) drawing.width(), (float) drawing.height());
    page.fill();
    all(drawing.content());
  }

  private void all(List<Ink> content) throws IOException {
    for (Ink ink : content) {
      if (ink instanceof Ink.Group group) {
        all(group.content());
      } else if (ink instanceof Ink.Words words) {
        words(words, false);
      } else if (ink instanceof Ink.Upward upward) {
        words(upward.words(), true);
      } else if (ink instanceof Ink.Form form) {
        form(form);
      } else if (ink instanceof Ink.Photograph photo) {
        photo(photo);
      } else if (ink instanceof Ink.Inset inset) {
        inset(inset);
      }
    }
  }

  /** A picture of ours as shapes and text, any other as its pixels. */
  private void inset(Ink.Inset inset) throws IOException {
    if (inset.picture() instanceof Drawn drawn) {
      inset(inset, drawn.drawing(), drawn.style(), drawn.style().line());
    } else if (inset.picture() instanceof ChartPicture chart) {
      inset(inset, ChartInk.drawing(chart), chart.style(), 1);
    } else if (inset.picture() instanceof FittedChart chart) {
      inset(inset, chart.drawing(), chart.style(), 1);
    } else {
      BufferedImage pixels = InsetSize.pixels(inset.picture());
      photo(new Ink.Photograph(pixels, inset.x(), inset.y(), inset.width(), inset.height()));
    }
  }

  private void inset(Ink.Inset inset, Drawing drawing, FigureStyle own, double lines)
      throws IOException {
    page.saveGraphicsState();
    float x = (float) inset.x();
    float y = (float) inset.y();
    page.addRect(x, y, (float) inset.width(), (float) inset.height());
    page.clip();
    float wide = (float) (inset.width() / drawing.width());
    float high = (float) (inset.height() / drawing.height());
    page.transform(new Matrix(wide, 0, 0, high, x, y));
    new PdfPainter(this, own, lines).whole(drawing);
    page.restoreGraphicsState();
  }

  private void photo(Ink.Photograph photo) throws IOException {
    float width = (float) photo.width();
    float height = (float) photo.height();
    // An image's own upright axis points up, the page's down.
    Matrix place =
        new Matrix(width, 0, 0, -height, (float) photo.x(), (float) (photo.y() + photo.height()));
    page.drawImage(LosslessFactory.createFromImage(document, photo.pixels()), place);
  }

  private void words(Ink.Words words, boolean upward) throws IOException {
    if (words.words().isBlank()) {
      return;
    }
    PDType0Font face = face(words.bold());
    if (!knows(face, words.words())) {
      outlined(words, upward);
      return;
    }
    if (words.halo()) {
      page.setStrokingColor(Color.decode(style.paper()));
      page.setLineWidth(HALO);
      page.setLineJoinStyle(1);
      page.setLineDashPattern(new float[0], 0);
      text(words, upward, face, RenderingMode.STROKE);
    }
    page.setNonStrokingColor(Color.decode(words.colour()));
    text(words, upward, face, RenderingMode.FILL);
  }

  private void text(Ink.Words words, boolean upward, PDType0Font face, RenderingMode mode)
      throws IOException {
    page.beginText();
    page.setRenderingMode(mode);
    page.setFont(face, (float) words.size());
    float x = (float) words.x();
    float y = (float) words.y();
    // The page's upright axis points down, that of letters up.
    page.setTextMatrix(upward ? new Matrix(0, -1, -1, 0, x, y) : new Matrix(1, 0, 0, -1, x, y));
    page.showText(words.words());
    page.endText();
  }

  private static boolean knows(PDType0Font face, String text) throws IOException {
    try {
      face.encode(text);
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  /** Letters that our fonts lack, as the shapes another font of this machine gives them. */
  private void outlined(Ink.Words words, boolean upward) throws IOException {
    Font font = Fonts.of(words.words(), words.size(), words.bold());
    AffineTransform place = AffineTransform.getTranslateInstance(words.x(), words.y());
    if (upward) {
      place.concatenate(LetterShapes.UPRIGHT);
    }
    Shape letters = new TextLayout(words.words(), font, EXACT).getOutline(place);
    if (words.halo()) {
      form(Ink.Form.line(letters, Ink.Pen.solid(style.paper(), HALO)));
    }
    form(Ink.Form.filled(letters, words.colour()));
  }

  private PDType0Font face(boolean bold) throws IOException {
    PDType0Font face = faces.get(bold);
    if (face == null) {
      face = PDType0Font.load(document, new ByteArrayInputStream(Fonts.file(bold)), true);
      faces.put(bold, face);
    }
    return face;
  }

  private void form(Ink.Form form) throws IOException {
    if (form.shape().getPathIterator(null).isDone()) {
      return;
    }
    if (!form.fill().isEmpty()) {
      page.setNonStrokingColor(Color.decode(form.fill()));
      veil(form.opacity());
      if (path(form.shape()) == PathIterator.WIND_EVEN_ODD) {
        page.fillEvenOdd();
      } else {
        page.fill();
      }
      veil(1);
    }
    if (form.pen() != null) {
      pen(form.pen());
      path(form.shape());
      page.stroke();
    }
  }

  /** Nothing is written while all is opaque. */
  private void veil(double opacity) throws IOException {
    if (opacity == 1 && veils.isEmpty()) {
      return;
    }
    PDExtendedGraphicsState veil = veils.get(opacity);
    if (veil == null) {
      veil = new PDExtendedGraphicsState();
      veil.setNonStrokingAlphaConstant((float) opacity);
      veils.put(opacity, veil);
    }
    page.setGraphicsStateParameters(veil);
  }

  private void pen(Ink.Pen pen) throws IOException {
    page.setStrokingColor(Color.decode(pen.colour()));
    page.setLineWidth((float) (thick * pen.width()));
    page.setLineCapStyle(0);
    page.setLineJoinStyle(1);
    float[] dash = new float[pen.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = (float) (thick * pen.dash().get(i));
    }
    page.setLineDashPattern(dash, 0);
  }

  private int path(Shape shape) throws IOException {
    float[] at = new float[6];
    float x = 0;
    float y = 0;
    PathIterator i = shape.getPathIterator(null);
    for (; !i.isDone(); i.next()) {
      int last = 0;
      switch (i.currentSegment(at)) {
        case PathIterator.SEG_MOVETO -> page.moveTo(at[0], at[1]);
        case PathIterator.SEG_LINETO -> page.lineTo(at[0], at[1]);
        case PathIterator.SEG_QUADTO -> {
          // The same curve as a cubic one: both inner points two thirds towards its only one.
          page.curveTo(
              x + 2 * (at[0] - x) / 3,
              y + 2 * (at[1] - y) / 3,
              at[2] + 2 * (at[0] - at[2]) / 3,
              at[3] + 2 * (at[1] - at[3]) / 3,
              at[2],
              at[3]);
          last = 2;
        }
        case PathIterator.SEG_CUBICTO -> {
          page.curveTo(at[0], at[1], at[2], at[3], at[4], at[5]);
          last = 4;
        }
        default -> page.closePath();
      }
      x = at[last];
      y = at[last + 1];
    }
    return i.getWindingRule();
  }
}
