package org.leverbook.figure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.leverbook.figure.FigureStyle.Accent;

/**
 * The colours that pictures come with, and how they were chosen.
 *
 * <p>The accents of {@code CALM} were computed: beginning with the dark and middle tones of Okabe
 * and Ito (2008, "Color Universal Design", from memory), six colours were moved at random, 160,000
 * steps with a fixed seed, to make the smallest distance between any two as great as possible, and
 * as little as possible away from the beginning (0.6 of the mean distance was taken off). A
 * distance is that of CIE 1976 L*a*b*, the least of four readers: usual colour vision, and
 * protanopia, deuteranopia and tritanopia as simulated by Machado, Oliveira and Fernandes (2009,
 * severity 1, matrices from memory). Every accent had to keep a contrast of 3.1 to 1 on white. The
 * smallest distance came to 26.5 (2.1 for the tones begun with); in {@code CLEAR}, where only a
 * quarter was taken off, to 35.4. {@code FigureStyleTest} computes both anew.
 *
 * <p>{@code GREYS} has no colours: dashes and markers tell lines apart, steps of grey filled parts.
 */
final class Palettes {

  private static final List<List<Double>> DASHES =
      List.of(
          List.of(),
          List.of(9.0, 4.0),
          List.of(2.5, 3.0),
          List.of(10.0, 3.0, 2.5, 3.0),
          List.of(5.0, 3.0),
          List.of(14.0, 3.0, 2.5, 3.0, 2.5, 3.0));

  static final List<Accent> CALM =
      accents(List.of("#00529c", "#dc6309", "#779762", "#ab4e7f", "#3a99d2", "#624400"));

  static final List<Accent> CLEAR =
      accents(List.of("#003b9a", "#e66d16", "#8b976b", "#88265c", "#289bd7", "#503f00"));

  private static final List<String> LINES =
      List.of("#000000", "#3c3c3c", "#000000", "#5a5a5a", "#7a7a7a", "#3c3c3c");

  private static final List<String> FILLS =
      List.of("#6a6a6a", "#c4c4c4", "#929292", "#dcdcdc", "#444444", "#1a1a1a");

  static final List<Accent> GREYS = greys();

  private Palettes() {}

  /** A dash and a marker for each colour. */
  static List<Accent> accents(List<String> colours) {
    List<Accent> accents = new ArrayList<>();
    for (int i = 0; i < colours.size(); i++) {
      int mark = i % DASHES.size();
      accents.add(new Accent(colours.get(i), DASHES.get(mark), mark));
    }
    return List.copyOf(accents);
  }

  private static List<Accent> greys() {
    List<Accent> accents = new ArrayList<>();
    for (int i = 0; i < LINES.size(); i++) {
      accents.add(new Accent(LINES.get(i), DASHES.get(i), i, FILLS.get(i)));
    }
    return List.copyOf(accents);
  }

  /** The tones of pictures in colour. */
  static Map<Tint, String> colours() {
    Map<Tint, String> tones = new EnumMap<>(Tint.class);
    tones.put(Tint.PAPER, "#ffffff");
    tones.put(Tint.INK, "#1c2126");
    tones.put(Tint.QUIET, "#5b6670");
    tones.put(Tint.BODY, "#dbe1e6");
    tones.put(Tint.FAR_BODY, "#eef1f3");
    tones.put(Tint.EDGE, "#8d99a5");
    tones.put(Tint.SPINE, "#77838f");
    tones.put(Tint.METAL, "#3f474f");
    tones.put(Tint.HOLDS, "#00529c");
    tones.put(Tint.FAILS, "#b64a00");
    tones.put(Tint.LOW, "#8cc4e8");
    tones.put(Tint.HIGH, "#00529c");
    tones.put(Tint.FLEXES, "#4a9fd6");
    tones.put(Tint.EXTENDS, "#e58f36");
    return tones;
  }

  /** The tones of pictures in black and white. */
  static Map<Tint, String> greyTones() {
    Map<Tint, String> tones = new EnumMap<>(Tint.class);
    tones.put(Tint.PAPER, "#ffffff");
    tones.put(Tint.INK, "#000000");
    tones.put(Tint.QUIET, "#4d4d4d");
    tones.put(Tint.BODY, "#e6e6e6");
    tones.put(Tint.FAR_BODY, "#f4f4f4");
    tones.put(Tint.EDGE, "#6b6b6b");
    tones.put(Tint.SPINE, "#4d4d4d");
    tones.put(Tint.METAL, "#333333");
    tones.put(Tint.HOLDS, "#333333");
    tones.put(Tint.FAILS, "#757575");
    tones.put(Tint.LOW, "#c4c4c4");
    tones.put(Tint.HIGH, "#333333");
    tones.put(Tint.FLEXES, "#8f8f8f");
    tones.put(Tint.EXTENDS, "#c9c9c9");
    return tones;
  }
}
