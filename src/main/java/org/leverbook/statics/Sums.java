package org.leverbook.statics;

import java.util.List;
import org.leverbook.load.Force;
import org.leverbook.muscle.Effort;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;

/**
 * The sums of one setting: what the supports give, and the moments that follow.
 *
 * <p>Loads and contacts are looked at when this is made, so that a band that is too short or a pad
 * that is not touched is refused there. The sums themselves wait until they are asked for: a
 * movement takes nine neighbouring positions for the sake of their poses alone.
 */
final class Sums {

  private final Later<Resting> resting;
  private final Later<List<Reaction>> reactions;
  private final Later<List<Reaction>> pressed;
  private final Later<KnownMoments> moments;
  private final Later<Effort> effort;

  Sums(Setting setting, Placement where) {
    Resting.Finder finder = new Resting.Finder(setting, where);
    resting = new Later<>(finder::resting);
    reactions = new Later<>(() -> gathered(where, Force.Kind.SUPPORT));
    pressed = new Later<>(() -> gathered(where, Force.Kind.LOAD));
    moments = new Later<>(() -> KnownMoments.of(where, resting()));
    effort = new Later<>(() -> pulled(setting, where));
  }

  Resting resting() {
    return resting.value();
  }

  List<Reaction> reactions() {
    return reactions.value();
  }

  /** What the body shares out: the push of a sled. */
  List<Reaction> pressed() {
    return pressed.value();
  }

  private List<Reaction> gathered(Placement where, Force.Kind kind) {
    return Reaction.gathered(where.tree(), resting().touches(), resting().forces(), kind);
  }

  private Effort pulled(Setting setting, Placement where) {
    if (!resting().holding().held()) {
      throw new Refused(
          "Which muscles pull is not known, because the supports cannot hold this position. "
              + resting().holding().sentence());
    }
    return Effort.of(setting.body(), where, new AskedLoads(where, resting().forces()));
  }

  /** Who pulls how hard. */
  Effort effort() {
    return effort.value();
  }

  KnownMoments moments() {
    return moments.value();
  }
}
