package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.leverbook.display.Picture;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;

/** The frames of a strip; one that cannot be drawn tells why in its place. */
final class Strip {

  private static final int FEWEST = 2;
  private static final int MOST = 12;

  private Strip() {}

  static List<PicturePage.Item> of(Lift<?> lift, int frames) {
    counted(frames);
    List<PicturePage.Item> strip = new ArrayList<>();
    for (int i = 0; i < frames; i++) {
      double percent = 100.0 * i / (frames - 1);
      String name =
          i == 0
              ? "start"
              : i == frames - 1
                  ? "finish"
                  : String.format(Locale.ROOT, "%.0f %% of the way", percent);
      strip.add(frame(name, () -> lift.at(Units.percent(percent))));
    }
    return drawable(strip);
  }

  static List<PicturePage.Item> of(Movement movement, int frames) {
    counted(frames);
    double whole = Si.seconds(movement.duration());
    List<PicturePage.Item> strip = new ArrayList<>();
    for (int i = 0; i < frames; i++) {
      double seconds = i == frames - 1 ? whole : whole * i / (frames - 1);
      String name = String.format(Locale.ROOT, "%.2f s", seconds);
      strip.add(frame(name, () -> movement.at(Units.seconds(seconds))));
    }
    return drawable(strip);
  }

  private static PicturePage.Item frame(String name, Supplier<Position> position) {
    Picture picture;
    try {
      picture = position.get().picture();
    } catch (Refused e) {
      picture = new NoPicture(e.getMessage(), FigureStyle.current());
    }
    return new PicturePage.Item(picture, name);
  }

  private static void counted(int frames) {
    if (frames < FEWEST || frames > MOST) {
      throw new Refused("A strip has " + FEWEST + " to " + MOST + " frames, not " + frames + ".");
    }
  }

  private static List<PicturePage.Item> drawable(List<PicturePage.Item> strip) {
    if (strip.stream().allMatch(item -> item.picture() instanceof NoPicture)) {
      NoPicture first = (NoPicture) strip.get(0).picture();
      throw new Refused("None of the frames can be drawn. The first says: " + first.reason());
    }
    return strip;
  }
}
