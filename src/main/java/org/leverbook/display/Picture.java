package org.leverbook.display;

import java.util.List;
import java.util.Optional;
import org.leverbook.quantity.Refused;

/** A value that is a picture: the same one as SVG, PNG and PDF. */
public interface Picture extends Shown, Traced {

  /**
   * The picture as one SVG document.
   *
   * @return the document
   */
  String svgDocument();

  /**
   * The picture as one PNG file, at twice the nominal size.
   *
   * @return the bytes of the file
   */
  byte[] pngFile();

  /**
   * The same picture in another look, as in {@code picture.styled(slide())}.
   *
   * @param look colours, lines, letters and language
   * @return the picture drawn anew; this one stays as it is
   * @throws Refused if this picture holds its colours fast
   */
  default Picture styled(Look look) {
    throw new Refused(
        "This picture cannot be drawn in another look: it holds its colours fast. Say"
            + " style(slide()) first, then make it anew.");
  }

  /**
   * The picture as one PNG file of a given width.
   *
   * @param pixels how many across
   * @return the bytes of the file
   */
  default byte[] pngFile(int pixels) {
    throw new Refused("This picture has one size only; save it without a number of pixels.");
  }

  /**
   * The picture as one PDF page; lines stay lines, and text stays text.
   *
   * @return the bytes of the file
   */
  default byte[] pdfFile() {
    throw new Refused("This picture is saved as .svg or .png, not as .pdf.");
  }

  /**
   * What is to be seen, in words and numbers: the text to set in place of the picture, for readers
   * who listen.
   *
   * @return a sentence or more
   */
  default String description() {
    return text();
  }

  /**
   * The same picture, whose SVG brings its letters along, for a place that must show exactly these;
   * an SVG as usual is written in whatever sans-serif letters its reader has. Some 50 kB more.
   *
   * @return the picture
   */
  default Picture lettersInside() {
    return this;
  }

  @Override
  default Optional<String> svg() {
    return Optional.of(svgDocument());
  }

  @Override
  default Optional<byte[]> png() {
    return Optional.of(pngFile());
  }

  /**
   * Saves the picture.
   *
   * @param name {@code "start.svg"}, {@code "start.png"}, {@code "start.pdf"}, or {@code "start"}
   *     for SVG and PNG
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  default Saved save(String name) {
    return switch (PictureName.ending(name)) {
      case "svg" -> new Saved(List.of(OutputFolder.write(name, svgDocument())));
      case "png" -> new Saved(List.of(OutputFolder.write(name, pngFile())));
      case "pdf" -> new Saved(List.of(OutputFolder.write(name, pdfFile())));
      default -> {
        byte[] png = pngFile();
        yield new Saved(
            List.of(
                OutputFolder.write(name + ".svg", svgDocument()),
                OutputFolder.write(name + ".png", png)));
      }
    };
  }

  /**
   * Saves the picture as a PNG of a given width, as a slide or a web page may ask. {@code
   * picture.save("start.png", 1600)} works; 10 pixels are refused, since nothing could be read.
   *
   * @param name as in {@code "start.png"}
   * @param pixels how many across, 400 to 10,000
   * @return what was written
   * @throws Refused if the name ends otherwise, the width is outside, or the disk says no
   */
  default Saved save(String name, int pixels) {
    String file = PictureName.png(name, pixels);
    return new Saved(List.of(OutputFolder.write(file, pngFile(pixels))));
  }
}
