package org.leverbook.marks;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.leverbook.quantity.Refused;

/**
 * A picture file.
 *
 * @param name of the file
 * @param image its pixels, upright as viewers show them
 */
public record Still(String name, BufferedImage image) {

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
              + Objects.requireNonNullElse(path.toAbsolutePath().getParent(), path)
              + ". Check the name, or give the whole path.");
    }
    try {
      byte[] file = Files.readAllBytes(path);
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(file));
      if (image == null) {
        throw new Refused("\"" + name + "\" is no picture that can be read here. " + ADVICE);
      }
      return new Still(path.getFileName().toString(), CameraHeld.upright(image, file));
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
