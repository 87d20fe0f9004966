package org.leverbook.body;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * Rigid segments held together by joints, as a tree. The human body is one; a lever of a textbook
 * is another.
 *
 * <p>Segments are stored parent before child, and the joint angles of a pose are one array, joint
 * after joint in the order of the segments, freedom after freedom within a joint.
 */
public final class SegmentTree {

  private final List<Segment> segments;
  private final Map<String, Integer> bySegment = new HashMap<>();
  private final Map<String, Integer> byJoint = new HashMap<>();
  private final int[] firstAngle;
  private final Map<String, Place> places;
  private final FlatTree flat;

  private SegmentTree(List<Segment> segments, Map<String, Place> places) {
    this.places = Map.copyOf(places);
    this.segments = List.copyOf(segments);
    firstAngle = new int[segments.size() + 1];
    for (int i = 0; i < segments.size(); i++) {
      Segment segment = segments.get(i);
      bySegment.put(segment.name(), i);
      int freedoms = 0;
      if (segment.joint() != null) {
        byJoint.put(segment.joint().fullName(), i);
        freedoms = segment.joint().freedoms().size();
      }
      firstAngle[i + 1] = firstAngle[i] + freedoms;
    }
    flat = new FlatTree(this);
  }

  /**
   * The same tree as plain arrays, for the inner loops.
   *
   * @return made once, shared
   */
  public FlatTree flat() {
    return flat;
  }

  /**
   * Starts a tree whose root is a point mass.
   *
   * @param name the root's name
   * @param mass kilograms
   * @param centreOfMass in the root's frame, metres
   * @return a builder that takes further segments
   */
  public static Builder root(String name, double mass, Vector3D centreOfMass) {
    return root(name, mass, centreOfMass, Vector3D.ZERO);
  }

  /**
   * Starts a tree.
   *
   * @param name the root's name
   * @param mass kilograms
   * @param centreOfMass in the root's frame, metres
   * @param radii of gyration about its own x, y and z through the centre of mass, metres
   * @return a builder that takes further segments
   */
  public static Builder root(String name, double mass, Vector3D centreOfMass, Vector3D radii) {
    return new Builder(new Segment(name, -1, null, mass, centreOfMass, radii));
  }

  /**
   * All segments, parent before child; the root is first.
   *
   * @return an unmodifiable list
   */
  public List<Segment> segments() {
    return segments;
  }

  /**
   * How many segments there are.
   *
   * @return at least one
   */
  public int size() {
    return segments.size();
  }

  /**
   * One segment.
   *
   * @param index 0 for the root
   * @return the segment
   */
  public Segment segment(int index) {
    return segments.get(index);
  }

  /**
   * How many joint angles a pose has.
   *
   * @return the sum over all joints
   */
  public int angles() {
    return firstAngle[segments.size()];
  }

  /**
   * Where a segment's joint angles begin in the array of a pose.
   *
   * @param segment its index; the number of segments for the end of the array
   * @return the index of its first angle
   */
  public int firstAngle(int segment) {
    return firstAngle[segment];
  }

  /**
   * The index of a segment.
   *
   * @param name its full name, as in "right thigh"
   * @return the index
   * @throws Refused if there is none of that name
   */
  public int indexOf(String name) {
    return found(bySegment.get(name), "segment", name);
  }

  /**
   * The index of the segment that hangs on a joint.
   *
   * @param joint the joint's full name, as in "right hip"
   * @return the index of its distal segment
   * @throws Refused if there is none of that name
   */
  public int distalOf(String joint) {
    return found(byJoint.get(joint), "joint", joint);
  }

  /**
   * Whether a joint of this name exists.
   *
   * @param joint a full name, as in "right hip"
   * @return true if so
   */
  public boolean hasJoint(String joint) {
    return byJoint.containsKey(joint);
  }

  /**
   * Whether a segment of this name exists.
   *
   * @param name a full name, as in "right thigh"
   * @return true if so
   */
  public boolean hasSegment(String name) {
    return bySegment.containsKey(name);
  }

  /**
   * A place that loads and pads know by name.
   *
   * @param site which
   * @param side left or right for a paired site
   * @return the place
   * @throws Refused if this tree has none, as a textbook's lever has no hands
   */
  public Place place(Site site, Side side) {
    Place place = places.get(site.on(side));
    if (place == null) {
      throw new Refused(
          side == Side.MIDLINE && site.paired()
              ? "There are two of the " + site.word() + ": say LEFT or RIGHT."
              : "This body has no place called \"" + site.on(side) + "\".");
    }
    return place;
  }

  /**
   * This tree with places that have names.
   *
   * @param named by full name
   * @return the same segments, with these places
   */
  SegmentTree withPlaces(Map<String, Place> named) {
    return new SegmentTree(segments, named);
  }

  /**
   * The place of one angle in the array of a pose.
   *
   * @param joint the joint's full name
   * @param axis flexion, abduction or rotation
   * @return its index
   * @throws Refused if the joint does not turn about that axis
   */
  public int angleOf(String joint, String axis) {
    Ask.present("axis of the " + joint, axis, "\"flexion\"");
    int segment = distalOf(joint);
    List<Freedom> freedoms = segments.get(segment).joint().freedoms();
    for (int k = 0; k < freedoms.size(); k++) {
      if (freedoms.get(k).motion().axis().equals(axis)) {
        return firstAngle[segment] + k;
      }
    }
    throw new Refused(noAxis(joint, axis, freedoms));
  }

  private static String noAxis(String joint, String axis, List<Freedom> freedoms) {
    String axes = freedoms.stream().map(f -> f.motion().axis()).collect(Collectors.joining(", "));
    return "The "
        + joint
        + " has no "
        + axis
        + (axes.isEmpty() ? ": it does not turn." : "; it turns about " + axes + ".");
  }

  /**
   * Whether one segment hangs on another, or is it.
   *
   * @param segment index of the outer segment
   * @param ancestor index of the inner segment
   * @return true if cutting the joint of {@code ancestor} frees {@code segment}
   */
  public boolean hangsOn(int segment, int ancestor) {
    int walk = segment;
    while (walk > ancestor) {
      walk = segments.get(walk).parent();
    }
    return walk == ancestor;
  }

  /**
   * The mass of all segments.
   *
   * @return kilograms
   */
  public double mass() {
    return segments.stream().mapToDouble(Segment::mass).sum();
  }

  private static int found(Integer index, String kind, String name) {
    if (index == null) {
      throw new Refused("There is no " + kind + " called \"" + name + "\".");
    }
    return index;
  }

  /** Takes segments one by one, each after the one that holds it. */
  public static final class Builder {

    private final List<Segment> segments = new ArrayList<>();
    private final Map<String, Integer> indexes = new HashMap<>();

    private Builder(Segment root) {
      add(root);
    }

    /**
     * Adds a segment that is a point mass: what it weighs matters, how it resists turning does not.
     *
     * @param parent the full name of the segment that holds it
     * @param joint what holds it
     * @param name its full name
     * @param mass kilograms
     * @param centreOfMass in its own frame, metres
     * @return this builder
     * @throws Refused if the parent is not there yet, or the name is taken
     */
    public Builder segment(
        String parent, Joint joint, String name, double mass, Vector3D centreOfMass) {
      return segment(parent, joint, name, mass, centreOfMass, Vector3D.ZERO);
    }

    /**
     * Adds a segment.
     *
     * @param parent the full name of the segment that holds it
     * @param joint what holds it
     * @param name its full name
     * @param mass kilograms
     * @param centreOfMass in its own frame, metres
     * @param radii of gyration about its own x, y and z through the centre of mass, metres
     * @return this builder
     * @throws Refused if the parent is not there yet, or the name is taken
     */
    public Builder segment(
        String parent,
        Joint joint,
        String name,
        double mass,
        Vector3D centreOfMass,
        Vector3D radii) {
      int holder = found(indexes.get(parent), "segment", parent);
      add(new Segment(name, holder, joint, mass, centreOfMass, radii));
      return this;
    }

    /**
     * The tree.
     *
     * @return an immutable tree of all segments added so far
     */
    public SegmentTree build() {
      return new SegmentTree(segments, Map.of());
    }

    private void add(Segment segment) {
      if (indexes.putIfAbsent(segment.name(), segments.size()) != null) {
        throw new Refused("Two segments are called \"" + segment.name() + "\".");
      }
      segments.add(segment);
    }
  }
}
