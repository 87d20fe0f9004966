package org.leverbook.figure;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/**
 * An image as a PNG file that tells its title, its description for readers who listen, and its size
 * on paper.
 */
final class PngFile {

  private static final String FORM = "javax_imageio_png_1.0";

  /** A page unit is a CSS pixel, of which 96 make an inch. */
  private static final double UNITS_PER_METRE = 96 / 0.0254;

  private PngFile() {}

  /**
   * Writes the file; the same image and texts give the same bytes.
   *
   * @param image the pixels
   * @param title a line
   * @param description a sentence or more
   * @param fineness pixels for one page unit
   * @return the file
   */
  static byte[] of(BufferedImage image, String title, String description, double fineness) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(file)) {
      IIOMetadata data =
          writer.getDefaultImageMetadata(
              ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
      tell(data, title, description, fineness);
      writer.setOutput(out);
      writer.write(new IIOImage(image, null, data));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return file.toByteArray();
  }

  private static void tell(IIOMetadata data, String title, String description, double fineness)
      throws IIOInvalidTreeException {
    IIOMetadataNode root = new IIOMetadataNode(FORM);
    IIOMetadataNode size = new IIOMetadataNode("pHYs");
    String perMetre = Long.toString(Math.round(fineness * UNITS_PER_METRE));
    size.setAttribute("pixelsPerUnitXAxis", perMetre);
    size.setAttribute("pixelsPerUnitYAxis", perMetre);
    size.setAttribute("unitSpecifier", "meter");
    root.appendChild(size);
    text(root, "Title", title);
    text(root, "Description", description);
    data.mergeTree(FORM, root);
  }

  /** The plain kind of text holds Latin letters only; every reader knows it. */
  private static void text(IIOMetadataNode root, String keyword, String text) {
    if (text.isBlank()) {
      return;
    }
    boolean latin = StandardCharsets.ISO_8859_1.newEncoder().canEncode(text);
    IIOMetadataNode entry = new IIOMetadataNode(latin ? "tEXtEntry" : "iTXtEntry");
    entry.setAttribute("keyword", keyword);
    if (latin) {
      entry.setAttribute("value", text);
    } else {
      entry.setAttribute("compressionFlag", "FALSE");
      entry.setAttribute("compressionMethod", "0");
      entry.setAttribute("languageTag", "en");
      entry.setAttribute("translatedKeyword", keyword);
      entry.setAttribute("text", text);
    }
    IIOMetadataNode chunk = new IIOMetadataNode(latin ? "tEXt" : "iTXt");
    // Two texts of a kind share a node; merging keeps them both.
    chunk.appendChild(entry);
    root.appendChild(chunk);
  }
}
