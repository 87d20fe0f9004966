package org.leverbook.marks;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.leverbook.quantity.Refused;

/**
 * A picture file.
 *
 * @param name as it was given
 * @param file its bytes
 * @param image its pixels
 */
public record Still(String name, byte[] file, BufferedImage image) {

  private static final String ADVICE = "Give a PNG, JPEG, GIF or BMP file.";

  /**
   * Reads a picture.
   *
   * @param name of the file
   * @return the picture
   * @throws Refused if there is none, or it is broken
   */
  public static Still read(String name) {
    Path path;
    try {
      path = Path.of(name);
    } catch (InvalidPathException e) {
      throw new Refused("\"" + name + "\" cannot be a file name here: " + e.getReason() + ".", e);
    }
    if (!Files.isRegularFile(path)) {
      throw new Refused(
          "There is no photo \""
              + name
              + "\" in "
              + path.toAbsolutePath().getParent()
              + ". Check the name, or give the whole path.");
    }
    try {
      byte[] file = Files.readAllBytes(path);
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(file));
      if (image == null) {
        throw new Refused("\"" + name + "\" is no picture that can be read here. " + ADVICE);
      }
      return new Still(name, file, image);
    } catch (IOException | RuntimeException e) {
      if (e instanceof Refused refused) {
        throw refused;
      }
      throw new Refused(
          "The photo \"" + name + "\" is broken: " + e.getMessage() + ". " + ADVICE, e);
    }
  }

  /**
   * Its width.
   *
   * @return pixels
   */
  public int width() {
    return image.getWidth();
  }

  /**
   * Its height.
   *
   * @return pixels
   */
  public int height() {
    return image.getHeight();
  }
}
