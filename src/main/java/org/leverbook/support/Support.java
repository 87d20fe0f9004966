package org.leverbook.support;

import java.util.List;
import org.leverbook.pose.Placement;

/** Something that holds the body up or that it leans on. Supports know nothing of one another. */
public interface Support {

  /**
   * What a table calls it.
   *
   * @return as in "floor" or "chest pad"
   */
  String source();

  /**
   * What it is, for a caption.
   *
   * @return as in "chest pad at 45°, friction 0.5"
   */
  String description();

  /**
   * Where it touches the body.
   *
   * @param where where the body is
   * @return its contact points, at least one
   * @throws org.leverbook.quantity.Refused if the body does not touch it; says how far away it is
   *     and what to move
   */
  List<Contact> contacts(Placement where);

  /**
   * Whether the person leans on it by choice: a pad. How much then is theirs to say, between
   * leaving it untouched and relaxing onto it. What carries the person (floor, seat, bench, bar) is
   * not a matter of choice.
   *
   * @return true for a pad
   */
  default boolean leanedOn() {
    return false;
  }
}
