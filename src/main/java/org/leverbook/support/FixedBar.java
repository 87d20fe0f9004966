package org.leverbook.support;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Place;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;

/**
 * A bar that does not move, in the hands: each hand can push or pull on it in any direction. The
 * bar is where the hands are.
 *
 * @param hands which hands hold it
 */
public record FixedBar(List<Side> hands) implements Support {

  /** Keeps its own copy. */
  public FixedBar {
    hands = List.copyOf(hands);
  }

  /** A bar in both hands. */
  public FixedBar() {
    this(List.of(Side.RIGHT, Side.LEFT));
  }

  @Override
  public String source() {
    return "fixed bar";
  }

  @Override
  public String description() {
    return "fixed bar in " + (hands.size() == 1 ? "one hand" : "both hands");
  }

  @Override
  public List<Contact> contacts(Placement where) {
    List<Contact> contacts = new ArrayList<>();
    for (Side side : hands) {
      Place hand = where.tree().place(Site.HAND, side);
      contacts.add(
          new Contact(hand.name(), hand.segment(), where.at(hand), Vector3D.PLUS_J, 0, true));
    }
    return contacts;
  }
}
