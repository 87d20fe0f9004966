package org.leverbook.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.leverbook.display.Display;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Kind;
import org.leverbook.display.Picture;
import org.leverbook.display.Shown;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Movement;

/**
 * Several pictures as one, with one title, one caption, and one line of sources and caution.
 *
 * <p>{@code PicturePage.beside(before, after).called("before", "after").sameScale().titled("Hips
 * lower")}. Positions and charts are laid out anew for their place, so that their letters keep
 * their size; other pictures are shrunk whole. No letter becomes smaller than a ninetieth of the
 * page's width: where that would happen, fewer stand beside each other. A page is a picture, so
 * pages nest.
 */
public final class PicturePage implements Drawn {

  /** So many pictures a page takes. */
  private static final int MOST = 48;

  /**
   * One of the pictures.
   *
   * @param picture which
   * @param name above it; empty for its own
   */
  record Item(Picture picture, String name) {}

  /** How the scales of its positions go together. */
  private enum Scales {
    OWN,
    ONE,
    ONE_WINDOW
  }

  private final List<Item> items;
  private final int rows;
  private final String title;
  private final String caption;
  private final Scales scales;
  private final boolean narrow;

  private PicturePage(
      List<Item> items, int rows, String title, String caption, Scales scales, boolean narrow) {
    this.items = List.copyOf(items);
    this.rows = rows;
    this.title = title;
    this.caption = caption;
    this.scales = scales;
    this.narrow = narrow;
  }

  /**
   * Pictures in a row.
   *
   * @param pictures one to 48: pictures, or values that have one, such as positions, sweeps, charts
   * @return the page
   * @throws Refused if there are none or too many, or one has no picture
   */
  public static PicturePage beside(Object... pictures) {
    return inRows(1, pictures);
  }

  /**
   * Pictures one below the other.
   *
   * @param pictures one to 48: pictures, or values that have one, such as positions, sweeps, charts
   * @return the page
   * @throws Refused if there are none or too many, or one has no picture
   */
  public static PicturePage below(Object... pictures) {
    return inRows(Math.max(1, pictures == null ? 1 : pictures.length), pictures);
  }

  /**
   * Pictures in rows of like length, in the order of reading.
   *
   * @param rows how many rows, up to the number of pictures
   * @param pictures one to 48: pictures, or values that have one, such as positions, sweeps, charts
   * @return the page
   * @throws Refused if there are none or too many, fewer than rows, or one has no picture
   */
  public static PicturePage inRows(int rows, Object... pictures) {
    if (pictures == null || pictures.length == 0) {
      throw new Refused(
          "There is no picture to put on the page: give some, as in beside(pull.start().picture(),"
              + " pull.finish().picture()).");
    }
    if (pictures.length > MOST) {
      throw new Refused(
          "A page takes up to "
              + MOST
              + " pictures, not "
              + pictures.length
              + ": make several pages.");
    }
    if (rows < 1 || rows > pictures.length) {
      throw new Refused(
          "With "
              + pictures.length
              + (pictures.length == 1 ? " picture" : " pictures")
              + " there can be 1 to "
              + pictures.length
              + " rows, not "
              + rows
              + ".");
    }
    List<Item> items =
        Arrays.stream(pictures).map(value -> new Item(pictureOf(value), "")).toList();
    return new PicturePage(items, rows, "", "", Scales.OWN, false);
  }

  /**
   * A lift as a strip of frames, evenly over its way, all showing the same piece of the world.
   *
   * @param lift which
   * @param frames 2 to 12
   * @return the page
   * @throws Refused if there are too few or too many frames, or none can be drawn
   */
  public static PicturePage strip(Lift<?> lift, int frames) {
    return frames(Strip.of(Ask.present("lift", lift, "backSquat(lifter)"), frames), lift.name());
  }

  /**
   * A movement as a strip of frames, evenly over its time, all showing the same piece of the world.
   *
   * @param movement which
   * @param frames 2 to 12
   * @return the page
   * @throws Refused if there are too few or too many frames, or none can be drawn
   */
  public static PicturePage strip(Movement movement, int frames) {
    Ask.present("movement", movement, "squat.moving(smooth(seconds(2)))");
    return frames(Strip.of(movement, frames), movement.name());
  }

  private static PicturePage frames(List<Item> frames, String name) {
    return new PicturePage(frames, 1, Caption.capital(name), "", Scales.ONE_WINDOW, false);
  }

  /**
   * The picture of a value.
   *
   * @param value a picture, or a value that has one
   * @return the picture
   * @throws Refused if it is missing or has none
   */
  public static Picture pictureOf(Object value) {
    Ask.present("picture", value, "pull.start().picture()");
    if (value instanceof Picture picture) {
      return picture;
    }
    if (value instanceof Shown) {
      return Illustrator.pictureOf(value, List.of());
    }
    if (Display.of(value) instanceof Picture picture) {
      return picture;
    }
    throw new Refused(
        "There is no picture of "
            + Kind.of(value)
            + ": a page takes pictures, positions, sweeps and charts.");
  }

  /**
   * The same page under a title.
   *
   * @param text of any length; empty for none
   * @return the changed page
   */
  public PicturePage titled(String text) {
    String given = Ask.present("title", text, "\"Four builds\"").strip();
    return new PicturePage(items, rows, given, caption, scales, narrow);
  }

  /**
   * The same page with sentences below the pictures.
   *
   * @param text of any length; empty for none
   * @return the changed page
   */
  public PicturePage captioned(String text) {
    String given = Ask.present("caption", text, "\"Watch the hips.\"").strip();
    return new PicturePage(items, rows, title, given, scales, narrow);
  }

  /**
   * The same page with a name above each picture.
   *
   * @param names one for each, in their order; empty for the picture's own
   * @return the changed page
   * @throws Refused if there are more or fewer names than pictures
   */
  public PicturePage called(String... names) {
    Ask.present("list of names", names, "\"before\", \"after\"");
    if (names.length != items.size()) {
      throw new Refused(
          "There are "
              + items.size()
              + " pictures but "
              + names.length
              + " names: give one name for each.");
    }
    List<Item> named = new ArrayList<>();
    for (int i = 0; i < names.length; i++) {
      String name = Ask.present("name", names[i], "\"before\"").strip();
      named.add(new Item(items.get(i).picture(), name));
    }
    return new PicturePage(named, rows, title, caption, scales, narrow);
  }

  /**
   * The same page with all its positions drawn to one scale.
   *
   * @return the changed page
   */
  public PicturePage sameScale() {
    Scales one = scales == Scales.OWN ? Scales.ONE : scales;
    return new PicturePage(items, rows, title, caption, one, narrow);
  }

  /**
   * The same page for a phone held upright: little more than half as wide, with fewer pictures
   * beside each other, so that letters come out larger.
   *
   * @return the changed page
   */
  public PicturePage forPhone() {
    return new PicturePage(items, rows, title, caption, scales, true);
  }

  @Override
  public List<Object> subjects() {
    return items.stream().flatMap(item -> item.picture().subjects().stream()).distinct().toList();
  }

  List<Item> items() {
    return items;
  }

  int rows() {
    return rows;
  }

  String title() {
    return title;
  }

  String caption() {
    return caption;
  }

  boolean oneScale() {
    return scales != Scales.OWN;
  }

  boolean oneWindow() {
    return scales == Scales.ONE_WINDOW;
  }

  boolean narrow() {
    return narrow;
  }

  /** What is on it; its parts are laid out anew each time. */
  @Override
  public Drawing drawing() {
    return new PicturePageInk(this).drawing();
  }

  /** That of its pictures. */
  @Override
  public FigureStyle style() {
    for (Item item : items) {
      if (item.picture() instanceof Drawn drawn) {
        return drawn.style();
      }
      if (item.picture() instanceof ChartPicture chart) {
        return chart.style();
      }
    }
    return FigureStyle.current();
  }

  @Override
  public byte[] pngFile() {
    Drawing drawing = drawing();
    PicturePageInk.paintable(drawing);
    return RasterPainter.png(drawing, style());
  }

  @Override
  public byte[] pngFile(int pixels) {
    Drawing drawing = drawing();
    PicturePageInk.paintable(drawing);
    return RasterPainter.png(drawing, style(), pixels / drawing.width());
  }

  @Override
  public String text() {
    PicturePageInk ink = new PicturePageInk(this);
    String head = title.isEmpty() ? "" : title + ": ";
    return "page: " + head + ink.arranged() + "; save it with .save(\"page\")";
  }

  @Override
  public String toString() {
    return text();
  }
}
