package org.leverbook.muscle;

import java.util.Locale;
import org.leverbook.display.Shown;

/**
 * What the bones of a joint press with, muscles included.
 *
 * @param joint full name, as in "right knee"
 * @param net the net force before muscles, newtons
 * @param size the force between the bones, newtons
 * @param along its part along the distal bone (hip, knee: pressed together) or into the socket
 *     (shoulder), newtons; negative where drawn apart
 * @param kneecap what presses the kneecap on the thigh, newtons; 0 for other joints
 */
public record BoneLoad(String joint, double net, double size, double along, double kneecap)
    implements Shown {

  @Override
  public String text() {
    String text =
        String.format(
            Locale.ROOT, "%s: %.0f N between the bones, %.0f before muscles", joint, size, net);
    return kneecap == 0
        ? text
        : text + String.format(Locale.ROOT, "; the kneecap is pressed with %.0f N", kneecap);
  }

  @Override
  public String toString() {
    return text();
  }
}
