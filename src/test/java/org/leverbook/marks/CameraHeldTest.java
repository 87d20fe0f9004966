package org.leverbook.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A photo taken with the telephone held upright lies on its side in the file. */
class CameraHeldTest {

  @TempDir Path folder;

  /** Grey but for a dark upper left quarter, which survives compression. */
  private static BufferedImage marked() {
    BufferedImage image = new BufferedImage(96, 64, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 64; y++) {
      for (int x = 0; x < 96; x++) {
        image.setRGB(x, y, x < 32 && y < 32 ? 0x101010 : 0xd0d0d0);
      }
    }
    return image;
  }

  private Still still(int note) throws IOException {
    ByteArrayOutputStream plain = new ByteArrayOutputStream();
    ImageIO.write(marked(), "jpg", plain);
    ByteBuffer exif = ByteBuffer.allocate(4 + 6 + 8 + 2 + 12 + 4);
    exif.putShort((short) 0xFFE1).putShort((short) (exif.capacity() - 2));
    exif.put("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1));
    exif.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(8);
    exif.putShort((short) 1).putShort((short) 0x0112).putShort((short) 3).putInt(1);
    exif.putShort((short) note).putShort((short) 0).putInt(0);
    byte[] jpeg = plain.toByteArray();
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.write(jpeg, 0, 2);
    file.write(exif.array());
    file.write(jpeg, 2, jpeg.length - 2);
    Path path = folder.resolve("held" + note + ".jpg");
    Files.write(path, file.toByteArray());
    return Still.read(path.toString());
  }

  @ParameterizedTest
  @CsvSource({
    "1, 96, 64, 10, 10",
    "2, 96, 64, 85, 10",
    "3, 96, 64, 85, 53",
    "4, 96, 64, 10, 53",
    "5, 64, 96, 10, 10",
    "6, 64, 96, 53, 10",
    "7, 64, 96, 53, 85",
    "8, 64, 96, 10, 85"
  })
  void the_pixels_are_those_that_a_viewer_shows(
      int note, int width, int height, int darkX, int darkY) throws IOException {
    Still still = still(note);

    assertThat(still.width()).isEqualTo(width);
    assertThat(still.height()).isEqualTo(height);
    assertThat(still.image().getRGB(darkX, darkY) & 0xff).isLessThan(0x60);
    assertThat(still.image().getRGB(width / 2, height / 2) & 0xff).isGreaterThan(0xa0);
  }

  @Test
  void a_note_that_makes_no_sense_is_passed_over() throws IOException {
    assertThat(still(77).width()).isEqualTo(96);
  }
}
