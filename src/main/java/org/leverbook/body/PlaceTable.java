package org.leverbook.body;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;
import org.leverbook.quantity.Refused;

/** Finds the {@link Site}s on one body by {@code body/places.csv}. */
final class PlaceTable {

  private static final Lookup TABLE = new Lookup(DataTable.read("body/places.csv"), "place");

  private final SegmentTree tree;
  private final Links links;
  private final Girths girths;
  private final double ankleAhead;

  PlaceTable(Person person, Links links, SegmentTree tree) {
    this.tree = tree;
    this.links = links;
    this.girths = Girths.of(person);
    ankleAhead =
        person.variation().shift(Variation.Trait.JOINT_FORWARD, "ankle") * links.footLength();
  }

  /** Every site of both sides, by its full name. */
  Map<String, Place> all() {
    Map<String, Place> places = new LinkedHashMap<>();
    for (Site site : Site.values()) {
      for (Side side : site.sides()) {
        places.put(site.on(side), place(site, side));
      }
    }
    return places;
  }

  private Place place(Site site, Side side) {
    DataRow row = TABLE.row(site.word());
    String segment = row.text("segment");
    // Limbs are named with their side, the spine is not: which it is, the tree knows.
    int index =
        tree.hasSegment(side.of(segment)) ? tree.indexOf(side.of(segment)) : tree.indexOf(segment);
    Vector3D from = Vector3D.ZERO;
    if (!row.text("from").isEmpty()) {
      from = tree.segment(tree.distalOf(side.of(row.text("from")))).joint().centre();
    }
    Vector3D shift =
        new Vector3D(
            // The foot's places are told from the ankle; where that lies further ahead, they do
            // not.
            part(row, "forward") - (segment.equals("foot") ? ankleAhead : 0),
            part(row, "up"),
            (side == Side.LEFT ? -1 : 1) * part(row, "side"));
    return new Place(site.on(side), index, from.add(shift));
  }

  private double part(DataRow row, String direction) {
    double share = row.optionalNumber(direction + "_share").orElse(0);
    return share == 0
        ? 0
        : share * measure(row.text(direction + "_kind"), row.text(direction + "_of"));
  }

  private double measure(String kind, String name) {
    return switch (kind) {
      case "depth" -> girths.depth(name);
      case "girth" -> girths.diameter(name);
      case "length" -> girths.length(name);
      case "links" -> link(name);
      default ->
          throw new Refused(
              "body/places.csv names a measure \""
                  + kind
                  + "\" that is none of depth, girth, length, links.");
    };
  }

  private double link(String name) {
    return switch (name) {
      case "shoulder_half_width" -> links.shoulderHalfWidth();
      case "hip_half_width" -> links.hipHalfWidth();
      case "upper_arm" -> links.upperArm();
      case "forearm" -> links.forearm();
      case "thigh" -> links.thigh();
      case "shank" -> links.shank();
      case "foot_length" -> links.footLength();
      case "foot_height" -> links.footHeight();
      case "head" -> links.head();
      default ->
          throw new Refused(
              "body/places.csv names a length \"" + name + "\" that the body does not have.");
    };
  }
}
