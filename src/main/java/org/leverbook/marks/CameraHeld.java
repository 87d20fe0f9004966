package org.leverbook.marks;

import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * How the camera was held: a telephone writes its pixels as its sensor lies and notes in the file
 * how to turn them. Viewers turn them, so the pixels that a coach reads off are those of the turned
 * picture.
 *
 * <p>The note is tag 0x0112 of the first directory of the Exif block (CIPA DC-008, Exif 2.3, from
 * memory): 1 as is, 3 upside down, 6 to be turned a quarter to the right, 8 to the left; 2, 4, 5
 * and 7 the same mirrored.
 */
final class CameraHeld {

  private static final int AS_IS = 1;
  private static final int TAG = 0x0112;
  private static final int EXIF_BLOCK = 0xFFE1;
  private static final int PIXELS_BEGIN = 0xFFDA;

  private CameraHeld() {}

  /** The picture as viewers show it. */
  static BufferedImage upright(BufferedImage image, byte[] file) {
    int note = note(file);
    if (note <= AS_IS || note > 8) {
      return image;
    }
    boolean lying = note >= 5;
    int w = image.getWidth();
    int h = image.getHeight();
    BufferedImage turned =
        new BufferedImage(lying ? h : w, lying ? w : h, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int toX =
            switch (note) {
              case 2, 3 -> w - 1 - x;
              case 4 -> x;
              case 5, 8 -> y;
              default -> h - 1 - y;
            };
        int toY =
            switch (note) {
              case 2 -> y;
              case 3, 4 -> h - 1 - y;
              case 5, 6 -> x;
              default -> w - 1 - x;
            };
        turned.setRGB(toX, toY, image.getRGB(x, y));
      }
    }
    return turned;
  }

  /** The note, or as is where there is none. */
  private static int note(byte[] file) {
    ByteBuffer in = ByteBuffer.wrap(file);
    if (file.length < 4 || (in.getShort() & 0xFFFF) != 0xFFD8) {
      return AS_IS;
    }
    while (in.remaining() > 4) {
      int marker = in.getShort() & 0xFFFF;
      int length = in.getShort() & 0xFFFF;
      if (marker == PIXELS_BEGIN || length < 2 || length - 2 > in.remaining()) {
        return AS_IS;
      }
      if (marker == EXIF_BLOCK) {
        int found = ofBlock(in.slice(in.position(), length - 2));
        if (found > 0) {
          return found;
        }
      }
      in.position(in.position() + length - 2);
    }
    return AS_IS;
  }

  private static int ofBlock(ByteBuffer block) {
    byte[] name = new byte[6];
    if (block.remaining() < 14) {
      return 0;
    }
    block.get(name);
    if (!new String(name, StandardCharsets.ISO_8859_1).equals("Exif\0\0")) {
      return 0;
    }
    ByteBuffer tiff = block.slice();
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = tiff.getInt(4);
    if (directory < 8 || directory + 2 > tiff.limit()) {
      return 0;
    }
    int entries = tiff.getShort(directory) & 0xFFFF;
    for (int i = 0; i < entries; i++) {
      int at = directory + 2 + 12 * i;
      if (at + 12 > tiff.limit()) {
        return 0;
      }
      if ((tiff.getShort(at) & 0xFFFF) == TAG) {
        return tiff.getShort(at + 8) & 0xFFFF;
      }
    }
    return 0;
  }
}
