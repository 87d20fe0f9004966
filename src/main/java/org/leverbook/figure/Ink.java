package org.leverbook.figure;

import java.awt.Shape;
import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.leverbook.display.Picture;

/** Something on the page, in page units, x to the right, y down. */
sealed interface Ink {

  /**
   * How a line is drawn.
   *
   * @param colour as #rrggbb
   * @param width page units
   * @param dash lengths on and off, page units; empty for a solid line
   */
  record Pen(String colour, double width, List<Double> dash) {

    static Pen solid(String colour, double width) {
      return new Pen(colour, width, List.of());
    }
  }

  /**
   * A shape, filled, outlined or both.
   *
   * @param shape its geometry
   * @param fill as #rrggbb; empty for none
   * @param opacity of the fill, 0 to 1
   * @param pen its outline; null for none
   */
  record Form(Shape shape, String fill, double opacity, Pen pen) implements Ink {

    static Form filled(Shape shape, String fill) {
      return new Form(shape, fill, 1, null);
    }

    static Form line(Shape shape, Pen pen) {
      return new Form(shape, "", 1, pen);
    }
  }

  /**
   * One line of text.
   *
   * @param words what it says
   * @param x left end
   * @param y base line
   * @param size of the font
   * @param bold whether bold
   * @param colour as #rrggbb
   * @param halo whether the paper's colour surrounds the letters, for text over other things
   */
  record Words(
      String words, double x, double y, double size, boolean bold, String colour, boolean halo)
      implements Ink {}

  /**
   * A line of text that runs upward from its place.
   *
   * @param words the text, its place where it begins
   */
  record Upward(Words words) implements Ink {}

  /**
   * A photo.
   *
   * @param pixels its pixels
   * @param x left edge
   * @param y upper edge
   * @param width on the page
   * @param height on the page
   */
  record Photograph(BufferedImage pixels, double x, double y, double width, double height)
      implements Ink {}

  /**
   * A whole picture on the page, shrunk with its letters.
   *
   * @param picture which
   * @param x left edge
   * @param y upper edge
   * @param width on the page
   * @param height on the page
   */
  record Inset(Picture picture, double x, double y, double width, double height) implements Ink {}

  /**
   * Several, as one.
   *
   * @param attributes name and value, for pages and tests that read the SVG
   * @param content in order, the first at the back
   */
  record Group(Map<String, String> attributes, List<Ink> content) implements Ink {

    /** Short maps have another order in every process; a picture must be the same in each. */
    public Group {
      attributes = attributes instanceof LinkedHashMap ? attributes : new TreeMap<>(attributes);
    }
  }
}
