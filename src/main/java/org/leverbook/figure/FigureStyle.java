package org.leverbook.figure;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.leverbook.body.JointId;

/**
 * Every colour, dash and text size of pictures and plots.
 *
 * @param paper background
 * @param ink text and lines of force
 * @param quiet secondary text, floor, scale bar
 * @param flesh near parts of the body
 * @param farFlesh far limbs
 * @param edge outline of the body
 * @param bone spine line and joint marks
 * @param metal bar and plates
 * @param accents a colour, dash and marker for each joint
 * @param title size of the title, page units
 * @param label size of labels at the arms, page units
 * @param caption size of the caption, page units
 * @param fonts font stack of the SVG
 */
record FigureStyle(
    String paper,
    String ink,
    String quiet,
    String flesh,
    String farFlesh,
    String edge,
    String bone,
    String metal,
    Map<JointId, Accent> accents,
    double title,
    double label,
    double caption,
    String fonts) {

  /**
   * How one joint is told from the others: by colour, and in grey print by dash and marker too.
   *
   * @param colour as #rrggbb
   * @param dash lengths on and off, page units; empty for a solid line
   * @param marker which marker shape a plot uses, from 0
   */
  record Accent(String colour, List<Double> dash, int marker) {}

  /**
   * Dark and middle tones of the palette of Okabe and Ito (2008, "Color Universal Design", from
   * memory), told apart by readers of every common colour vision, and its yellow left out because
   * it vanishes on white.
   */
  private static final List<Accent> ACCENTS =
      List.of(
          new Accent("#0072b2", List.of(), 0),
          new Accent("#d55e00", List.of(9.0, 4.0), 1),
          new Accent("#009e73", List.of(2.5, 3.0), 2),
          new Accent("#b0528f", List.of(10.0, 3.0, 2.5, 3.0), 3),
          new Accent("#56b4e9", List.of(5.0, 3.0), 4),
          new Accent("#b07d00", List.of(14.0, 3.0, 2.5, 3.0, 2.5, 3.0), 5));

  /** For screen and paper, colour and grey. */
  static final FigureStyle PRINT =
      new FigureStyle(
          "#ffffff",
          "#1c2126",
          "#5b6670",
          "#dbe1e6",
          "#eef1f3",
          "#8d99a5",
          "#77838f",
          "#3f474f",
          usualAccents(),
          19,
          13,
          12,
          "Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif");

  /** Keeps its own copy of the map. */
  FigureStyle {
    accents = Map.copyOf(accents);
  }

  /** The joints a lesson speaks of most have fixed accents; the others take turns. */
  private static Map<JointId, Accent> usualAccents() {
    List<JointId> first =
        List.of(
            JointId.HIP,
            JointId.L5_S1,
            JointId.SHOULDER,
            JointId.T7_T8,
            JointId.ANKLE,
            JointId.KNEE);
    Map<JointId, Accent> accents = new EnumMap<>(JointId.class);
    for (int i = 0; i < first.size(); i++) {
      accents.put(first.get(i), ACCENTS.get(i));
    }
    int next = 0;
    for (JointId joint : JointId.values()) {
      if (!accents.containsKey(joint)) {
        accents.put(joint, ACCENTS.get(next++ % ACCENTS.size()));
      }
    }
    return accents;
  }

  Accent accent(JointId joint) {
    return accents.get(joint);
  }

  /**
   * The accent of one curve of many: where the palette ends it begins anew with other dashes.
   *
   * @param which from 0
   * @return its accent
   */
  Accent accent(int which) {
    int own = which % ACCENTS.size();
    Accent dashed = ACCENTS.get((own + which / ACCENTS.size()) % ACCENTS.size());
    return new Accent(ACCENTS.get(own).colour(), dashed.dash(), dashed.marker());
  }

  /**
   * Accents for several joints in one plot, all different as far as the palette goes: each keeps
   * its own unless another has taken it.
   *
   * @param joints in order
   * @return one accent for each
   */
  List<Accent> accents(List<JointId> joints) {
    List<Accent> taken = new java.util.ArrayList<>();
    for (JointId joint : joints) {
      Accent own = accent(joint);
      Accent free =
          taken.contains(own)
              ? ACCENTS.stream().filter(a -> !taken.contains(a)).findFirst().orElse(own)
              : own;
      taken.add(free);
    }
    return taken;
  }
}
