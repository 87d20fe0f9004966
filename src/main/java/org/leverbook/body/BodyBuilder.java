package org.leverbook.body;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;

/** Puts lengths, masses and joints together into one {@link Body}. */
final class BodyBuilder {

  private static final Lookup LEVELS =
      new Lookup(DataTable.read("body/spine_levels.csv"), "joint_below");
  private static final Lookup CENTRES =
      new Lookup(DataTable.read("body/joint_centres.csv"), "id", "sex");
  private static final DataTable LINKS = DataTable.read("body/links_from_ansur.csv");
  private static final DataTable DE_LEVA = DataTable.read("body/segments_de_leva_1996.csv");

  /**
   * Height of the foot's centre of mass and of the toe joint above the sole, as shares of the
   * ankle's height: assumptions, no source; neither moves a moment of a flat foot by more than
   * rounding.
   */
  private static final double FOOT_CENTRE_HEIGHT = 0.5;

  private static final double BALL_HEIGHT = 0.3;

  /**
   * Sideways places of heel edges and ball of the foot, as shares of foot breadth: assumptions, no
   * source.
   */
  private static final double HEEL_HALF_BREADTH = 0.25;

  private static final double BALL_HALF_BREADTH = 0.42;

  private final Person person;
  private final String sex;
  private final Links links;
  private final SegmentMasses masses;
  private final Gyration gyration;
  private final Links usual;
  private final double meanStature;
  private final Variation varied;
  private SegmentTree.Builder tree;

  BodyBuilder(Person person) {
    this.person = person;
    this.sex = person.sex().word();
    this.links = Links.of(person);
    this.usual = Links.usual(person.sex(), person.metres());
    this.varied = person.variation();
    this.masses = SegmentMasses.of(person.table(), person.sex()).varied(person.variation());
    this.gyration = new Gyration(person);
    // Places given in metres belong to the survey's mean person, whose stature the foot link tells.
    DataRow foot = LINKS.only("foot length", r -> r.is("sex", sex) && r.is("link", "foot_length"));
    meanStature = foot.number("length_m") / foot.number("fraction_of_stature");
  }

  static DataRow level(JointId joint) {
    return LEVELS.row(joint.word());
  }

  Body build() {
    // The pelvis is built about its hip joints: where these lie further forward, it lies further
    // back.
    Vector3D hips =
        new Vector3D(
            varied.shift(Variation.Trait.JOINT_FORWARD, "hip"),
            varied.shift(Variation.Trait.JOINT_UP, "hip"),
            0);
    Vector3D pelvisCentre =
        centre("pelvis_com").scalarMultiply(person.metres() * trunkFactor()).subtract(hips);
    double pelvis = mass(masses.slice("pelvis"), Part.TRUNK);
    tree = SegmentTree.root("pelvis", pelvis, pelvisCentre, gyration.pelvis(trunkFactor()));
    column();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      arm(side);
      leg(side);
    }
    SegmentTree bare = tree.build();
    SegmentTree built = bare.withPlaces(new PlaceTable(person, links, bare).all());
    List<Body.SolePoint> soles = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      sole(built, side, soles);
    }
    return new Body(person, links, built, soles);
  }

  private double trunkFactor() {
    return (links.pelvisUp() + links.spine()) / usual.lengthOf(Part.TRUNK);
  }

  /** Spine, neck and head: places of the standing person, each relative to the joint below. */
  private void column() {
    List<JointId> joints = JointId.column();
    Vector3D below = Vector3D.ZERO;
    String parent = "pelvis";
    for (int i = 0; i < joints.size(); i++) {
      JointId joint = joints.get(i);
      DataRow row = level(joint);
      Vector3D here = columnPlace(joint);
      String name = row.text("level");
      Vector3D inner;
      double high = 0;
      if (joint == JointId.HEAD) {
        DataRow head = CENTRES.row("head_com_from_c0c1", "both");
        inner = vector(head).scalarMultiply(person.metres() / meanStature);
      } else {
        Vector3D above = columnPlace(joints.get(i + 1));
        double forward =
            row.optionalNumber("slice_com_forward_mm").orElse(0) / 1000
                + (joint.compareTo(JointId.C7_T1) < 0
                    ? varied.shift(Variation.Trait.CENTRE, "trunk")
                    : 0);
        inner = above.subtract(here).scalarMultiply(0.5).add(new Vector3D(forward, 0, 0));
        high = above.getY() - here.getY();
      }
      Part part = joint.spineLevel() && joint != JointId.C7_T1 ? Part.TRUNK : Part.NECK;
      double own =
          joint == JointId.HEAD
              ? person.kilograms() * masses.slice("head")
              : mass(masses.slice(name), part);
      Vector3D radii = joint == JointId.HEAD ? gyration.head() : gyration.slice(joint, high, own);
      Joint held = joint(joint, Side.MIDLINE, here.subtract(below));
      tree.segment(parent, held, name, own, inner, radii);
      parent = name;
      below = here;
    }
  }

  /** A joint of the spine in the pelvis frame, standing. */
  private Vector3D columnPlace(JointId joint) {
    DataRow row = level(joint);
    double up = row.number("height_frac_vertical");
    double top = level(JointId.HEAD).number("height_frac_vertical");
    double height =
        up <= 1
            ? links.pelvisUp() + up * links.spine()
            : links.pelvisUp() + links.spine() + (up - 1) / (top - 1) * links.neck();
    String forward = "forward_of_hip_frac_stature_" + sex;
    double base = level(JointId.L5_S1).number(forward);
    double ahead = (row.number(forward) - base) * person.metres() * trunkFactor();
    return new Vector3D(ahead - links.pelvisBack(), height, 0);
  }

  private void arm(Side side) {
    Vector3D neckBase = columnPlace(JointId.C7_T1);
    Vector3D t1 = columnPlace(JointId.T1_T2);
    Vector3D collar = mirrored(neckBase.add(sternoclavicularFromNeckBase()).subtract(t1), side);
    Vector3D shoulder =
        mirrored(shoulderFromNeckBase().subtract(sternoclavicularFromNeckBase()), side);
    String girdle = side.of("shoulder girdle");
    // Collar bone and shoulder blade weigh with the trunk slices of the published tables.
    tree.segment("T1", joint(JointId.SHOULDER_GIRDLE, side, collar), girdle, 0, Vector3D.ZERO);
    limb(girdle, JointId.SHOULDER, side, shoulder, "upper arm", links.upperArm(), Part.UPPER_ARM);
    limb(
        side.of("upper arm"),
        JointId.ELBOW,
        side,
        down(links.upperArm()),
        "forearm",
        links.forearm(),
        Part.FOREARM);
    // The radius, which turns about the ulna, weighs with the forearm; its joint stands half-way
    // down.
    tree.segment(
        side.of("forearm"),
        joint(JointId.FOREARM, side, down(links.forearm() / 2)),
        side.of("radius"),
        0,
        Vector3D.ZERO);
    double knuckles =
        DE_LEVA
                .only(
                    "hand",
                    r -> r.is("sex", sex) && r.is("segment", "hand") && r.is("variant", "a"))
                .number("length_frac_stature")
            * person.metres()
            * factor(Part.HAND);
    limb(
        side.of("radius"),
        JointId.WRIST,
        side,
        down(links.forearm() / 2),
        "hand",
        knuckles,
        Part.HAND);
    // The fingers weigh with the hand.
    tree.segment(
        side.of("hand"),
        joint(JointId.GRIP, side, down(links.grip())),
        side.of("fingers"),
        0,
        Vector3D.ZERO);
  }

  private void leg(Side side) {
    Vector3D hip = new Vector3D(0, 0, side.sign() * links.hipHalfWidth());
    limb("pelvis", JointId.HIP, side, hip, "thigh", links.thigh(), Part.THIGH);
    limb(
        side.of("thigh"),
        JointId.KNEE,
        side,
        down(links.thigh()),
        "shank",
        links.shank(),
        Part.SHANK);
    double length = links.footLength();
    SegmentMasses.Limb foot = masses.limb("foot");
    double forward =
        person.table() == SegmentTable.DE_LEVA_1996
            ? footPoint("foot_heel")
                + foot.along() * (footPoint("foot_toe") - footPoint("foot_heel"))
            : foot.along() * footPoint("foot_mtp_axis");
    tree.segment(
        side.of("shank"),
        joint(JointId.ANKLE, side, down(links.shank())),
        side.of("foot"),
        mass(foot.share(), Part.FOOT),
        new Vector3D(forward * length, (FOOT_CENTRE_HEIGHT - 1) * links.footHeight(), 0),
        gyration.foot(length * footShare()));
    // The toes weigh with the foot.
    tree.segment(
        side.of("foot"),
        joint(
            JointId.BALL,
            side,
            new Vector3D(
                footPoint("foot_mtp_axis") * length, (BALL_HEIGHT - 1) * links.footHeight(), 0)),
        side.of("toes"),
        0,
        Vector3D.ZERO);
  }

  /** How much of the foot's length the table's foot has: heel to toe, or ankle to ball. */
  private double footShare() {
    return person.table() == SegmentTable.DE_LEVA_1996 ? 1 : footPoint("foot_mtp_axis");
  }

  private void sole(SegmentTree built, Side side, List<Body.SolePoint> soles) {
    int foot = built.indexOf(side.of("foot"));
    int toes = built.indexOf(side.of("toes"));
    double length = links.footLength();
    double breadth = links.footBreadth() * side.sign();
    double down = -links.footHeight();
    double heel = footPoint("foot_heel_contact") * length;
    String first = "foot_first_mtp";
    soles.add(point(side, "heel, outer", foot, heel, down, HEEL_HALF_BREADTH * breadth));
    soles.add(point(side, "heel, inner", foot, heel, down, -HEEL_HALF_BREADTH * breadth));
    soles.add(
        point(
            side,
            "ball, little toe",
            foot,
            footPoint("foot_fifth_mtp") * length,
            down,
            BALL_HALF_BREADTH * breadth));
    soles.add(
        point(
            side,
            "ball, big toe",
            foot,
            footPoint(first) * length,
            down,
            -BALL_HALF_BREADTH * breadth));
    Vector3D ball = built.segment(toes).joint().centre();
    soles.add(
        point(
            side,
            "toe tip",
            toes,
            footPoint("foot_toe") * length - ball.getX(),
            down - ball.getY(),
            0));
  }

  private static Body.SolePoint point(
      Side side, String name, int segment, double x, double y, double z) {
    return new Body.SolePoint(side.of(name), segment, new Vector3D(x, y, z));
  }

  /** A limb segment that hangs straight down from its joint, mass and centre from the table. */
  private void limb(
      String parent, JointId joint, Side side, Vector3D at, String name, double length, Part part) {
    SegmentMasses.Limb limb = masses.limb(name);
    tree.segment(
        parent,
        joint(joint, side, at),
        side.of(name),
        mass(limb.share(), part),
        down(limb.along() * length),
        gyration.limb(name, length, mass(limb.share(), part)));
  }

  private Joint joint(JointId id, Side side, Vector3D centre) {
    return JointBuilder.of(id, side, centre, person.sex());
  }

  private double mass(double share, Part part) {
    return person.kilograms() * share * (person.massChanges() ? factor(part) : 1);
  }

  private double factor(Part part) {
    return links.lengthOf(part) / usual.lengthOf(part);
  }

  private Vector3D sternoclavicularFromNeckBase() {
    DataRow skin = bySex("suprasternale_from_c7");
    DataRow rule = bySex("c7t1_from_surface");
    Vector3D across = vector(skin);
    // The rule turns the line from cervicale to suprasternale upward; its note holds the angle (8
    // deg men, 14 women).
    double up = Math.toRadians(person.sex() == Sex.MALE ? 8 : 14);
    double direction = Math.atan2(across.getY(), across.getX()) + up;
    double reach = rule.number("x_forward") * across.getNorm();
    Vector3D neckBase = new Vector3D(reach * Math.cos(direction), reach * Math.sin(direction), 0);
    return across
        .subtract(neckBase)
        .add(vector(bySex("sc_joint")))
        .scalarMultiply(person.metres() / meanStature);
  }

  private Vector3D shoulderFromNeckBase() {
    DataRow shoulder = bySex("sjc_from_midline");
    DataRow neck = level(JointId.C7_T1);
    double down =
        (shoulder.number("y_up") - neck.number("height_frac_stature_" + sex)) * person.metres();
    // The shoulder stands above the hip axis, as the row's note says.
    double forward = -neck.number("forward_of_hip_frac_stature_" + sex) * person.metres();
    return new Vector3D(
        forward + varied.shift(Variation.Trait.JOINT_FORWARD, "shoulder"),
        down + varied.shift(Variation.Trait.JOINT_UP, "shoulder"),
        links.shoulderHalfWidth());
  }

  /** Ahead of the ankle, as a share of the foot's length. */
  private double footPoint(String id) {
    return CENTRES.find(id, sex).orElseGet(() -> CENTRES.row(id, "both")).number("x_forward")
        - varied.shift(Variation.Trait.JOINT_FORWARD, "ankle");
  }

  private Vector3D centre(String id) {
    return vector(bySex(id));
  }

  private DataRow bySex(String id) {
    return CENTRES.row(id, sex);
  }

  private static Vector3D vector(DataRow row) {
    return new Vector3D(
        row.number("x_forward"), row.number("y_up"), row.optionalNumber("z_lateral").orElse(0));
  }

  private static Vector3D down(double length) {
    return new Vector3D(0, -length, 0);
  }

  private static Vector3D mirrored(Vector3D right, Side side) {
    return new Vector3D(right.getX(), right.getY(), side.sign() * right.getZ());
  }
}
