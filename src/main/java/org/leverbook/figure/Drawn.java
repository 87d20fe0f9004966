package org.leverbook.figure;

import org.leverbook.display.Picture;

/** A picture that is a drawing: one content, whatever the file. */
interface Drawn extends Picture {

  /**
   * What is on the page.
   *
   * @return the drawing
   */
  Drawing drawing();

  /**
   * With what it was laid out.
   *
   * @return the style
   */
  FigureStyle style();

  @Override
  default String svgDocument() {
    return SvgWriter.write(drawing(), style());
  }

  @Override
  default Picture lettersInside() {
    return new Lettered(this);
  }

  @Override
  default byte[] pngFile() {
    return RasterPainter.png(drawing(), style(), RasterPainter.FINENESS);
  }

  @Override
  default byte[] pngFile(int pixels) {
    return RasterPainter.png(drawing(), style(), pixels / drawing().width());
  }

  @Override
  default byte[] pdfFile() {
    return PdfPainter.pdf(drawing(), style(), style().line());
  }

  @Override
  default String description() {
    return drawing().title() + ". " + drawing().description();
  }
}
