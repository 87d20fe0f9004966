package org.leverbook.figure;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.leverbook.body.JointId;
import org.leverbook.display.MovingPicture;
import org.leverbook.display.Picture;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.study.Sweep;

/** The positions of a sweep one after another; laid out when it is first looked at. */
final class Animation implements MovingPicture {

  private static final int MOST = 400;

  /** Of one frame, seconds: viewers show none shorter, and nobody waits longer. */
  private static final double SHORTEST = 0.02;

  private static final double LONGEST = 10;

  /** How long a way takes that has no time of its own, and how long its ends stand, seconds. */
  private static final double USUAL = 3.2;

  private static final double REST = 0.8;

  /** Pixels of a GIF for one page unit. */
  private static final double FINENESS = 1.25;

  private final Sweep sweep;
  private final FigureStyle style;
  private final Supplier<MotionPage> page;
  private final double seconds;
  private final boolean back;

  private Animation(
      Sweep sweep, FigureStyle style, Supplier<MotionPage> page, double seconds, boolean back) {
    this.sweep = sweep;
    this.style = style;
    this.page = page;
    this.seconds = seconds;
    this.back = back;
  }

  static Animation of(Sweep sweep, List<JointId> joints, FigureStyle style) {
    Plots.plottable(sweep);
    int frames = sweep.rows().size();
    if (frames < 2 || frames > MOST) {
      throw new Refused(
          "A moving picture has 2 to " + MOST + " frames, but here are " + frames + " positions.");
    }
    double own = sweep.rows().get(frames - 1).value() - sweep.rows().get(0).value();
    boolean timed = sweep.name().equals("time") && sweep.unit().equals("s") && own > 0;
    double shortest = SHORTEST * (frames - 1);
    return new Animation(
        sweep, style, once(sweep, joints, style), Math.max(shortest, timed ? own : USUAL), false);
  }

  /** Laid out once, and kept. */
  private static Supplier<MotionPage> once(Sweep sweep, List<JointId> joints, FigureStyle style) {
    MotionPage[] made = new MotionPage[1];
    return () -> {
      synchronized (made) {
        made[0] = made[0] == null ? MotionPage.of(sweep, joints, style) : made[0];
        return made[0];
      }
    };
  }

  @Override
  public List<Object> subjects() {
    return List.of(sweep);
  }

  @Override
  public MovingPicture lasting(Quantity<Time> duration) {
    double asked = Si.seconds(Ask.present("duration", duration, "seconds(4)"));
    int steps = frameCount() - 1;
    if (!(asked >= SHORTEST * steps && asked <= LONGEST * steps)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "%d frames cannot last %.2f s: viewers show a frame for %.2f s at least, and nobody"
                  + " looks at one for more than %.0f s. Take %.2f to %.0f s.",
              frameCount(),
              asked,
              SHORTEST,
              LONGEST,
              SHORTEST * steps,
              LONGEST * steps));
    }
    return new Animation(sweep, style, page, asked, back);
  }

  @Override
  public MovingPicture thereAndBack() {
    return new Animation(sweep, style, page, seconds, true);
  }

  private int frameCount() {
    return sweep.rows().size();
  }

  @Override
  public List<Picture> frames() {
    return IntStream.range(0, frameCount()).mapToObj(this::frame).toList();
  }

  private Picture frame(int frame) {
    return new PositionPicture(page.get().drawing(frame), style);
  }

  /** The first frame with something to see. */
  private Picture poster() {
    return frame(page.get().numbers().poster());
  }

  /** The frames in the order in which they are shown. */
  private List<Integer> order() {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < frameCount(); i++) {
      order.add(i);
    }
    for (int i = frameCount() - 2; back && i > 0; i--) {
      order.add(i);
    }
    return order;
  }

  /** How long each of an order stands, in parts of a second, without losing what is rounded. */
  private List<Integer> waits(List<Integer> order, int parts) {
    List<Integer> waits = new ArrayList<>();
    double step = seconds / (frameCount() - 1);
    double wished = 0;
    int given = 0;
    for (int frame : order) {
      boolean end = frame == 0 || frame == frameCount() - 1;
      wished += parts * (end ? Math.max(REST, step) : step);
      int wait = (int) Math.round(wished) - given;
      waits.add(wait);
      given += wait;
    }
    return waits;
  }

  @Override
  public byte[] gifFile() {
    List<BufferedImage> images = new ArrayList<>();
    for (int i = 0; i < frameCount(); i++) {
      images.add(RasterPainter.image(page.get().drawing(i), style, FINENESS));
    }
    List<Integer> order = order();
    String told = page.get().title() + ". " + page.get().description();
    return GifFile.write(images, order, waits(order, 100), told);
  }

  @Override
  public String htmlPage() {
    List<Integer> frames = IntStream.range(0, frameCount()).boxed().toList();
    return MotionHtml.write(page.get(), style, waits(frames, 1000), back);
  }

  @Override
  public String svgDocument() {
    return poster().svgDocument();
  }

  @Override
  public byte[] pngFile() {
    return poster().pngFile();
  }

  @Override
  public String text() {
    return "moving picture: "
        + description()
        + "; save it with .save(\"way.gif\") or .save(\"way.html\")";
  }

  @Override
  public String description() {
    return String.format(
        Locale.ROOT,
        "%s, %d frames in %.1f s%s",
        page.get().title(),
        frameCount(),
        seconds,
        back ? ", there and back" : "");
  }

  @Override
  public String toString() {
    return text();
  }
}
