package org.leverbook.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Place;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * Rings or handles on straps: each pulls its hand straight towards the point it hangs from, and
 * does nothing else.
 *
 * @param anchor the middle of the points they hang from, in the world, metres
 * @param halfSpan half of the distance between those points, metres
 */
public record Rings(Vector3D anchor, double halfSpan) implements Support {

  /**
   * Rings that hang from a beam.
   *
   * @param forward place of the beam, ahead of the world's origin, -5 to 5 m
   * @param up its height, 0 to 10 m
   * @param span distance between the two straps above, 0 to 2 m
   * @return the rings
   * @throws Refused if a length is missing or outside
   */
  public static Rings from(Quantity<Length> forward, Quantity<Length> up, Quantity<Length> span) {
    return new Rings(
        new Vector3D(
            Ask.length("place of the beam", forward, -5, 5),
            Ask.length("height of the beam", up, 0, 10),
            0),
        Ask.length("span of the straps", span, 0, 2) / 2);
  }

  @Override
  public String source() {
    return "rings";
  }

  @Override
  public String description() {
    return String.format(
        Locale.ROOT, "rings from a beam %.2f m up and %.2f m ahead", anchor.getY(), anchor.getX());
  }

  @Override
  public List<Contact> contacts(Placement where) {
    List<Contact> contacts = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Place hand = where.tree().place(Site.HAND, side);
      Vector3D at = where.at(hand);
      Vector3D strap = anchor.add(new Vector3D(0, 0, side.sign() * halfSpan)).subtract(at);
      if (strap.getNorm() < 0.05) {
        throw new Refused(
            String.format(
                Locale.ROOT,
                "The %s is %.1f cm from the point its strap hangs from: a strap needs at least 5 cm."
                    + " Hang it higher.",
                hand.name(),
                100 * strap.getNorm()));
      }
      contacts.add(Contact.smooth(hand.name(), hand.segment(), at, strap.normalize()));
    }
    return contacts;
  }
}
