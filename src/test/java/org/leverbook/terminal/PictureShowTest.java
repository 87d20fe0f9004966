package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.imageio.ImageIO;
import org.jline.terminal.Size;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leverbook.display.Preferences;
import org.leverbook.display.Shown;

/** What a terminal gets to see of a picture. */
class PictureShowTest {

  /** The log of a terminal type unknown here, which these tests do not need. */
  private static final Logger LOG = Logger.getLogger("org.jline");

  @BeforeAll
  static void quiet() {
    LOG.setLevel(Level.OFF);
  }

  @AfterAll
  static void asBefore() {
    LOG.setLevel(null);
  }

  private static final Shown PICTURE =
      new Shown() {
        @Override
        public String text() {
          return "a picture";
        }

        @Override
        public Optional<byte[]> png() {
          return Optional.of(file());
        }
      };

  private static byte[] file() {
    BufferedImage image = new BufferedImage(1800, 900, BufferedImage.TYPE_INT_RGB);
    var graphics = image.createGraphics();
    graphics.setColor(Color.RED);
    graphics.fillOval(100, 100, 600, 600);
    graphics.dispose();
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", file);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return file.toByteArray();
  }

  private static Optional<String> shown(
      String type, Charset encoding, Map<String, String> environment, Supplier<Preferences> looks)
      throws IOException {
    var terminal = new LineDisciplineTerminal("test", type, new ByteArrayOutputStream(), encoding);
    terminal.setSize(Size.of(80, 24));
    Palette palette = new Palette(terminal, environment, looks);
    return new PictureShow(terminal, environment, palette, looks).of(PICTURE);
  }

  @Test
  void a_terminal_that_can_draw_is_sent_the_picture() throws IOException {
    Optional<String> sent =
        shown("mlterm", StandardCharsets.UTF_8, Map.of(), () -> Preferences.USUAL);

    // The device control string with which a sixel picture begins (DEC STD 070).
    assertThat(sent.orElseThrow()).startsWith("\u001bP").endsWith("\u001b\\\n");
  }

  @Test
  void inside_another_terminal_and_in_one_that_cannot_draw_there_is_a_sketch() throws IOException {
    for (Map<String, String> environment : List.of(Map.<String, String>of(), Map.of("TMUX", "x"))) {
      String type = environment.isEmpty() ? "xterm-256color" : "mlterm";
      String sketch =
          shown(type, StandardCharsets.UTF_8, environment, () -> Preferences.USUAL).orElseThrow();
      assertThat(sketch).containsPattern("[⠁-⣿]{3}").doesNotContain("\u001bP");
      assertThat(sketch.lines().count()).isLessThanOrEqualTo(20);
    }
  }

  @Test
  void nothing_is_sent_where_it_could_not_be_read_or_is_not_wanted() throws IOException {
    Supplier<Preferences> off =
        () -> new Preferences(Preferences.Measure.KILOGRAMS, 0, Preferences.Theme.DARK, false);
    assertThat(shown("xterm", StandardCharsets.US_ASCII, Map.of(), () -> Preferences.USUAL))
        .isEmpty();
    assertThat(shown("dumb", StandardCharsets.UTF_8, Map.of(), () -> Preferences.USUAL)).isEmpty();
    assertThat(shown("mlterm", StandardCharsets.UTF_8, Map.of(), off)).isEmpty();
  }

  @Test
  void without_colours_a_sketch_is_plain() throws IOException {
    String sketch =
        shown(
                "xterm-256color",
                StandardCharsets.UTF_8,
                Map.of("NO_COLOR", "1"),
                () -> Preferences.USUAL)
            .orElseThrow();
    assertThat(sketch).doesNotContain("\u001b");
  }
}
