package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * Who pulls how hard to hold one pose against what loads, weight and supports ask of the joints.
 *
 * <p>All axes that muscles turn are held together, both sides and every level of the spine, so that
 * a muscle of two joints counts at both. In this order: tissue that is stretched takes what it can
 * ({@link Tissue}); the muscles share the rest with the least summed stress ({@link Sharing}); what
 * nobody can hold is told ({@link #uncovered()}).
 *
 * <p>Two kinds of axes are no conditions. Where something that the tables do not know holds a part
 * ({@link Held#notKnown()}): sternum and ribs are a frame beside the thoracic spine, and our arms
 * hang from T1 alone, where real shoulder muscles spread over the whole thorax; so what muscles do
 * not hold there is left to it, at a price (assumption: {@link #FRAME}). And an axis that is asked
 * for a direction in which the tables know no muscle (bending the neck forward): muscles must not
 * turn it further, more cannot be said.
 *
 * <p>It is the least stress that holds: people who brace pull harder, muscle against muscle.
 */
public final class Effort implements Shown {

  /**
   * What leaving moment to what the tables do not know costs: a twentieth for the size of what the
   * axis' muscles give, as against one for a muscle at its limit. Assumption; no measurement of the
   * split was found.
   */
  static final double FRAME = 0.1;

  /** What stretched tissue at its most costs, as against one for a muscle at its limit. */
  private static final double STRETCHED = 1e-3;

  private final Musculature muscles;
  private final Placement where;
  private final JointLoads loads;
  private final double[] stresses;
  private final double[] arms;
  private final List<Held> held;

  private Effort(
      Musculature muscles,
      Placement where,
      JointLoads loads,
      double[] stresses,
      double[] arms,
      List<Held> held) {
    this.muscles = muscles;
    this.where = where;
    this.loads = loads;
    this.stresses = stresses;
    this.arms = arms;
    this.held = List.copyOf(held);
  }

  /**
   * One muscle's part.
   *
   * @param strand which muscle
   * @param stress its pull as a share of the greatest it can give, 0 to 1
   * @param force its pull, newtons
   */
  public record Pull(Strand strand, double stress, double force) {}

  private static final String TITLE = "words for the title";
  private static final String EXAMPLE = "\"hinge, start\"";

  /** What is needed again and again for one person, one thread at a time. */
  private static final class Room {

    final Musculature muscles;
    final Tissue tissue;
    final Sharing squared;
    final Sharing cubed;
    final double[] moments;
    final double[] needed;
    final int columns;

    Room(Body body, Musculature muscles) {
      this.muscles = muscles;
      tissue = Tissue.of(body);
      int rows = muscles.axes().length;
      columns = muscles.strands().size() + tissue.axes().length;
      squared = sharing(rows, 2);
      cubed = sharing(rows, 3);
      moments = new double[rows * columns];
      needed = new double[rows];
    }

    private Sharing sharing(int rows, int power) {
      Sharing sharing = new Sharing(rows, columns, power);
      for (int row = 0; row < rows; row++) {
        if (!Held.besides(muscles.tree(), muscles.axes()[row]).isEmpty()) {
          sharing.soften(row, FRAME);
        }
      }
      for (int i = muscles.strands().size(); i < columns; i++) {
        sharing.cheapen(i, STRETCHED);
      }
      return sharing;
    }

    /** What each muscle at full force, and all tissue, would give. */
    void fill(double[] arms, Pose pose) {
      List<Strand> strands = muscles.strands();
      int width = strands.size();
      for (int row = 0; row < needed.length; row++) {
        for (int i = 0; i < width; i++) {
          moments[row * columns + i] = arms[row * width + i] * strands.get(i).maxForce();
        }
      }
      for (int k = 0; k < tissue.axes().length; k++) {
        moments[muscles.row(tissue.axes()[k]) * columns + width + k] = -tissue.most(k, pose);
      }
    }

    /** Where no muscle turns an axis the way it is needed, muscles need only not turn it more. */
    void askNothingOfUnopposed() {
      for (int row = 0; row < needed.length; row++) {
        boolean opposed = false;
        for (int i = row * columns; i < (row + 1) * columns; i++) {
          opposed |= moments[i] * needed[row] > 0;
        }
        needed[row] = opposed ? needed[row] : 0;
      }
    }

    /** What stretched tissue gives about an axis in the answer. */
    double tissue(Sharing answer, int axis, Pose pose) {
      for (int k = 0; k < tissue.axes().length; k++) {
        if (tissue.axes()[k] == axis) {
          return -answer.pullOf(muscles.strands().size() + k) * tissue.most(k, pose);
        }
      }
      return 0;
    }
  }

  private static final ThreadLocal<Room> ROOM = new ThreadLocal<>();

  private static Room room(Body body) {
    Musculature muscles = Musculature.of(body);
    Room room = ROOM.get();
    if (room == null || room.muscles != muscles) {
      room = new Room(body, muscles);
      ROOM.set(room);
    }
    return room;
  }

  /**
   * The effort with the least sum of squared stresses.
   *
   * @param body whose
   * @param where the pose, placed
   * @param loads what the joints are asked
   * @return the effort
   */
  public static Effort of(Body body, Placement where, JointLoads loads) {
    return of(body, where, loads, false);
  }

  /**
   * The effort with the least sum of cubed stresses: more muscles take part, none stands out.
   *
   * @param body whose
   * @param where the pose, placed
   * @param loads what the joints are asked
   * @return the effort
   */
  public static Effort cubed(Body body, Placement where, JointLoads loads) {
    return of(body, where, loads, true);
  }

  private static Effort of(Body body, Placement where, JointLoads loads, boolean cubed) {
    Room room = room(body);
    int[] axes = room.muscles.axes();
    double[] arms = new double[axes.length * room.muscles.strands().size()];
    room.muscles.arms(where.pose(), arms);
    double[] asked = new double[axes.length];
    for (int row = 0; row < axes.length; row++) {
      asked[row] = asked(axes[row], where, loads);
      room.needed[row] = -asked[row];
    }
    room.fill(arms, where.pose());
    room.askNothingOfUnopposed();
    Sharing sharing = cubed ? room.cubed : room.squared;
    // From nothing each time: the same position gives the same numbers to the last digit.
    sharing.forget();
    sharing.solve(room.moments, room.needed);
    double[] stresses = new double[room.muscles.strands().size()];
    for (int i = 0; i < stresses.length; i++) {
      stresses[i] = sharing.pullOf(i);
    }
    List<Held> held = new ArrayList<>();
    for (int row = 0; row < axes.length; row++) {
      double given = 0;
      for (int i = 0; i < stresses.length; i++) {
        double force = stresses[i] * room.muscles.strands().get(i).maxForce();
        given += arms[row * stresses.length + i] * force;
      }
      double tissue = room.tissue(sharing, axes[row], where.pose());
      double uncovered = -(asked[row] + tissue + given);
      held.add(Held.of(where.tree(), axes[row], asked[row], tissue, given, uncovered));
    }
    return new Effort(room.muscles, where, loads, stresses, arms, held);
  }

  /**
   * The stresses that would hold so much of the same with other arms and greatest pulls.
   *
   * @param body whose
   * @param gains what each muscle's moment about each axis at full pull is multiplied by, above
   *     zero; rows of axes, columns of muscles
   * @param part what is asked of every joint is multiplied by this
   * @return in the order of {@link Musculature#strands()}
   */
  double[] varied(Body body, double[] gains, double part) {
    Room room = room(body);
    room.fill(arms, where.pose());
    int width = stresses.length;
    for (int row = 0; row < room.needed.length; row++) {
      room.needed[row] = -part * held.get(row).asked();
      for (int i = 0; i < width; i++) {
        room.moments[row * room.columns + i] *= gains[row * width + i];
      }
    }
    room.askNothingOfUnopposed();
    room.squared.forget();
    room.squared.solve(room.moments, room.needed);
    double[] other = new double[width];
    Arrays.setAll(other, room.squared::pullOf);
    return other;
  }

  private static double asked(int axis, Placement where, JointLoads loads) {
    Vector3D line = Musculature.axis(axis, where);
    return loads.moment(Held.segment(where.tree(), axis)).dotProduct(line);
  }

  /**
   * Every muscle, also those that are slack.
   *
   * @return in the order of {@link Musculature#strands()}
   */
  public List<Pull> pulls() {
    List<Pull> pulls = new ArrayList<>();
    for (int i = 0; i < stresses.length; i++) {
      Strand strand = muscles.strands().get(i);
      pulls.add(new Pull(strand, stresses[i], stresses[i] * strand.maxForce()));
    }
    return pulls;
  }

  /**
   * How hard one muscle pulls.
   *
   * @param strand its place among {@link Musculature#strands()}
   * @return a share of the greatest it can give, 0 to 1
   */
  public double stress(int strand) {
    return stresses[strand];
  }

  /**
   * Its pull.
   *
   * @param strand its place among {@link Musculature#strands()}
   * @return newtons
   */
  public double force(int strand) {
    return stresses[strand] * muscles.strands().get(strand).maxForce();
  }

  /**
   * The arm of one muscle about one axis, with the share of it that crosses there.
   *
   * @param row the axis' row
   * @param strand its place among {@link Musculature#strands()}
   * @return metres, positive where it turns the joint in the axis' positive direction
   */
  public double arm(int row, int strand) {
    return arms[row * stresses.length + strand];
  }

  /**
   * How each axis is held.
   *
   * @return one for each axis that a muscle turns, in the order of {@link Musculature#axes()}
   */
  public List<Held> held() {
    return held;
  }

  /**
   * What muscles and tissue together cannot hold.
   *
   * @return the axes where a newton metre or more, and a hundredth or more of what is asked, stays
   *     uncovered
   */
  public List<Held> uncovered() {
    return held.stream().filter(Held::lacks).toList();
  }

  /** The muscles that pull, and what they are scaled to. */
  public Musculature muscles() {
    return muscles;
  }

  /** Where the body is. */
  public Placement where() {
    return where;
  }

  /** What the joints are asked. */
  public JointLoads loads() {
    return loads;
  }

  /**
   * What pulls, hardest first.
   *
   * @param what to call it in the title, as in "hinge, start"
   * @return the muscles that are not slack: stress, force
   */
  public Sheet muscles(String what) {
    return EffortSheets.muscles(this, Ask.present(TITLE, what, EXAMPLE));
  }

  /**
   * How each joint is held: what is asked, what stretched tissue, what muscles give, what stays
   * uncovered.
   *
   * @param what to call it in the title, as in "hinge, start"
   * @return every axis that muscles turn
   */
  public Sheet joints(String what) {
    return EffortSheets.joints(this, Ask.present(TITLE, what, EXAMPLE));
  }

  /**
   * Who can hold against what is asked about one axis.
   *
   * @param axis the place of its angle in the tree's order
   * @param what to call it in the title, as in "right hip, hinge, start"
   * @return the muscles that turn it the right way: arm, force, stress, part of the moment, what
   *     they do elsewhere
   * @throws Refused if the data hold no muscle for this axis
   */
  public Sheet opposing(int axis, String what) {
    Ask.present("words for the axis", what, "\"knee flexion\"");
    if (muscles.row(axis) < 0) {
      int segment = Held.segment(muscles.tree(), axis);
      throw new Refused(
          "The data hold no muscle that turns the "
              + muscles.tree().segment(segment).joint().fullName()
              + " this way, so who opposes is not known.");
    }
    return EffortSheets.opposing(this, axis, what);
  }

  @Override
  public String text() {
    return muscles("one position").text();
  }

  @Override
  public String toString() {
    return text();
  }
}
