package org.leverbook.body;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.data.Recent;

/**
 * The body of one person: lengths, segment tree, and the points by which it touches the world.
 *
 * @param person whose body
 * @param links joint-to-joint lengths
 * @param tree segments, joints, masses
 * @param soles where each foot can press on the floor
 */
public record Body(Person person, Links links, SegmentTree tree, List<SolePoint> soles) {

  /** How many bodies are kept: the same lifter is asked for again and again. */
  private static final int KEPT = 64;

  private static final Recent<Person, Body> KNOWN =
      new Recent<>(KEPT, person -> new BodyBuilder(person).build());

  private static final Map<JointId, Double> FLEXION_SHARES = flexionShares();

  /**
   * A point of a sole.
   *
   * @param name as in "right heel"
   * @param segment index of the segment that carries it
   * @param place in that segment's frame, metres
   */
  public record SolePoint(String name, int segment, Vector3D place) {}

  /** Keeps its own copy of the list. */
  public Body {
    soles = List.copyOf(soles);
  }

  /**
   * Builds the body of a person.
   *
   * @param person who
   * @return the body, in the anatomical position when all joint angles are zero
   */
  public static Body of(Person person) {
    return KNOWN.get(person);
  }

  /**
   * Where a load or a pad takes hold.
   *
   * @param site which, as in {@code Site.HAND}
   * @param side left or right for a paired site; ignored for one of the midline
   * @return the place, carried by its segment
   */
  public Place place(Site site, Side side) {
    return tree.place(site, side);
  }

  /**
   * The sources of lengths and masses.
   *
   * @return one line for each
   */
  public List<String> sources() {
    return List.of(
        "masses: " + person.table().source(),
        "lengths: ANSUR II survey means (Gordon et al. 2014) by joint-centre rules, fractions of stature",
        "spine by level: Panjabi et al. 1991, 1992; Pearsall et al. 1996; shares of bending after Pearcy et al. 1984");
  }

  /**
   * The share of trunk flexion that each joint of the spine takes, from {@code
   * body/spine_levels.csv}.
   *
   * @param joint L5/S1 to T1/T2
   * @return the fraction; all together 1
   */
  public static double flexionShare(JointId joint) {
    return FLEXION_SHARES.getOrDefault(joint, 0.0);
  }

  private static Map<JointId, Double> flexionShares() {
    Map<JointId, Double> shares = new EnumMap<>(JointId.class);
    for (JointId joint : JointId.spine()) {
      shares.put(joint, BodyBuilder.level(joint).optionalNumber("flex_share_trunk").orElse(0));
    }
    return shares;
  }
}
