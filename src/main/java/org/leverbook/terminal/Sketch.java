package org.leverbook.terminal;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.AttributedStyle;

/**
 * A picture in letters: each cell holds eight Braille dots, two across and four down, and a dot
 * stands wherever the picture there differs from its background. Where its texts are known, they
 * are written as texts, and the margins that held nothing else are cut off.
 */
final class Sketch {

  private static final int BRAILLE = 0x2800;
  private static final int ACROSS = 2;
  private static final int DOWN = 4;

  /** The bit of each dot, row by row, after the Unicode standard's block of Braille patterns. */
  private static final int[][] DOTS = {{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}};

  /** How far down a text may move to find a free place, in lines. */
  private static final int FARTHEST = 2;

  private final BufferedImage image;
  private final SvgTexts texts;
  private final double scale;
  private final boolean coloured;

  private Sketch(BufferedImage image, SvgTexts texts, boolean coloured) {
    boolean same =
        texts.width() > 0
            && Math.abs(image.getHeight() / texts.height() * texts.width() / image.getWidth() - 1)
                < 0.02;
    this.texts = same ? texts : SvgTexts.NONE;
    this.scale = same ? image.getWidth() / texts.width() : 1;
    this.image = image;
    this.coloured = coloured;
  }

  /**
   * Draws.
   *
   * @param image the picture
   * @param texts the texts in it, as far as they are known
   * @param columns the most cells a line may have
   * @param rows the most lines
   * @param coloured whether cells take the colour of the ink in them
   * @return the lines
   */
  static List<AttributedString> of(
      BufferedImage image, SvgTexts texts, int columns, int rows, boolean coloured) {
    return new Sketch(image, texts, coloured).lines(columns, rows);
  }

  private List<AttributedString> lines(int columns, int rows) {
    DottedInk ink = new DottedInk(withoutTexts());
    if (ink.right() <= ink.left()) {
      return List.of();
    }
    // A cell is about twice as high as wide, so its dots lie in squares.
    double square =
        Math.max(
            (ink.right() - ink.left()) / (double) (columns * ACROSS),
            (ink.bottom() - ink.top()) / (double) (rows * DOWN));
    square = Math.max(1, square);
    int wide = (int) Math.ceil((ink.right() - ink.left()) / square / ACROSS);
    int high = (int) Math.ceil((ink.bottom() - ink.top()) / square / DOWN);
    LetterGrid letters = new LetterGrid(columns, high);
    place(letters, ink, square);
    List<AttributedString> lines = new ArrayList<>();
    for (int row = 0; row < high; row++) {
      AttributedStringBuilder line = new AttributedStringBuilder();
      int end = Math.max(wide, letters.end(row));
      for (int column = 0; column < end; column++) {
        if (letters.isTaken(column, row)) {
          line.append(letters.at(column, row));
        } else {
          cell(line, ink, column, row, square);
        }
      }
      lines.add(line.toAttributedString());
    }
    return lines;
  }

  /** Large letters first: they say what matters. */
  private void place(LetterGrid letters, DottedInk ink, double square) {
    texts.texts().stream()
        .sorted(Comparator.comparingDouble(SvgTexts.Text::size).reversed())
        .forEach(
            text -> {
              double x = (text.left() * scale - ink.left()) / square / ACROSS;
              double y = ((text.baseline() - text.size() / 3) * scale - ink.top()) / square / DOWN;
              letters.write(text.words(), (int) Math.floor(x), (int) Math.floor(y), FARTHEST);
            });
  }

  private BufferedImage withoutTexts() {
    if (texts.texts().isEmpty()) {
      return image;
    }
    BufferedImage bare =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = bare.createGraphics();
    graphics.drawImage(image, 0, 0, null);
    graphics.setColor(new Color(image.getRGB(0, 0)));
    graphics.scale(scale, scale);
    for (SvgTexts.Text text : texts.texts()) {
      int left = (int) Math.floor(text.left() - 1);
      int top = (int) Math.floor(text.baseline() - text.size());
      graphics.fillRect(
          left, top, (int) Math.ceil(text.width()) + 2, (int) Math.ceil(1.3 * text.size()));
    }
    graphics.dispose();
    return bare;
  }

  private void cell(
      AttributedStringBuilder line, DottedInk ink, int column, int row, double square) {
    int bits = 0;
    DottedInk.Dot all = DottedInk.Dot.NONE;
    for (int y = 0; y < DOWN; y++) {
      for (int x = 0; x < ACROSS; x++) {
        DottedInk.Dot dot =
            ink.dot((column * ACROSS + x) * square, (row * DOWN + y) * square, square);
        if (dot.stands()) {
          bits |= DOTS[y][x];
          all = all.and(dot);
        }
      }
    }
    AttributedStyle style = coloured && bits != 0 ? all.style() : AttributedStyle.DEFAULT;
    line.append(bits == 0 ? " " : Character.toString(BRAILLE + bits), style);
  }
}
