package org.leverbook.strength;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Variation;
import org.leverbook.body.Variation.Trait;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * How strong a person is at each joint in each direction: published measurements scaled to the
 * person's build, age and training. Not a limit for a lift: healthy people vary by 20 to 30 % (from
 * memory).
 */
public final class Capacity implements Shown {

  private static final double STEP = 15;

  private final Body body;
  private final Map<String, Strength> strengths;
  private final List<Ability> abilities;

  private Capacity(Body body, Map<String, Strength> strengths, List<Ability> abilities) {
    this.body = body;
    this.strengths = strengths;
    this.abilities = List.copyOf(abilities);
  }

  /**
   * The strength of one person.
   *
   * @param body whose; its person says age and training
   * @return what each joint can give
   */
  public static Capacity of(Body body) {
    Ask.present("body", body, "lifter.body()");
    Who who = Who.of(body);
    Map<String, Strength> strengths = new LinkedHashMap<>();
    LegStrengths.into(strengths, who);
    TrunkStrengths.into(strengths, who, body);
    ArmStrengths.into(strengths, who);
    Variation varied = body.person().variation();
    strengths.replaceAll((name, s) -> s.times(varied.factor(Trait.STRENGTH, joint(name))));
    return new Capacity(body, strengths, new Abilities(body, who, strengths).all());
  }

  /**
   * The same with straps: the hands need not hold.
   *
   * @return without the grip
   */
  public Capacity strapped() {
    List<Ability> others = abilities.stream().filter(a -> a.joint() != JointId.GRIP).toList();
    return new Capacity(body, strengths, others);
  }

  /**
   * The same with only a share of every strength, so that the largest load found with it asks that
   * share of the joint that limits. Tables and curves still tell the whole.
   *
   * @param share above 0; 0.7 for seventy per cent
   * @return the capacity to look for loads with
   * @throws Refused if it is outside 0 to 1000
   */
  public Capacity times(double share) {
    Ask.number("share of every strength", share, 0, 1_000);
    return new Capacity(body, strengths, abilities.stream().map(a -> a.times(share)).toList());
  }

  /**
   * Every joint's ways to act.
   *
   * @return both directions of each axis that muscles turn; the shoulder's by raising, across and
   *     rotation
   */
  public List<Ability> abilities() {
    return abilities;
  }

  /**
   * The strength of one joint in one direction.
   *
   * @param joint which; any level of the low back stands for the whole
   * @param action as in "extend"
   * @return empty where nothing was measured
   */
  public Optional<Strength> strength(JointId joint, String action) {
    return Optional.ofNullable(strengths.get(group(joint) + " " + action));
  }

  /**
   * The greatest moment.
   *
   * @param joint which; any level of the low back stands for the whole
   * @param action as in "extend"
   * @param angle of the joint, radians; of the low back the bend of all its levels together
   * @param speed radians a second, positive where the acting muscles shorten
   * @return newton metres; empty where that was not measured
   */
  public OptionalDouble most(JointId joint, String action, double angle, double speed) {
    return strength(joint, action).map(s -> s.at(angle, speed)).orElse(OptionalDouble.empty());
  }

  /** The joint of a strength's name: what stands before the action. */
  private static String joint(String name) {
    return name.substring(0, name.indexOf(' '));
  }

  /** The name under which a joint's strengths are kept. */
  static String group(JointId joint) {
    if (TrunkStrengths.lumbar().contains(joint)) {
      return "trunk";
    }
    return joint.paired() ? joint.word() : joint.muscles().equals("neck") ? "neck" : "upper back";
  }

  /**
   * Whose strength it is.
   *
   * @return the body
   */
  public Body body() {
    return body;
  }

  /**
   * The greatest moment of each joint in each direction, and at which angle it is reached.
   *
   * @return a row for each
   */
  public Sheet table() {
    List<Column> columns =
        List.of(
            Column.text("joint"),
            Column.text("action"),
            new Column("greatest", "N·m", 0),
            new Column("at", "°", 0),
            Column.text("status"),
            Column.text("source"),
            Column.text("doubt"));
    List<List<Object>> rows = new ArrayList<>();
    strengths.forEach(
        (name, strength) -> {
          double best = strength.best();
          String joint = joint(name);
          List<Object> row = new ArrayList<>();
          row.add(joint);
          row.add(name.substring(joint.length() + 1));
          row.add(strength.at(best));
          row.add(strength.from() == strength.to() ? null : Math.toDegrees(best));
          row.add(strength.evidence().status());
          row.add(strength.evidence().source());
          row.add(strength.evidence().note());
          rows.add(row);
        });
    return new Sheet("Strength, " + body.person().text(), columns, rows, notes()).about(this);
  }

  /**
   * What one joint can give against its angle.
   *
   * @param joint which
   * @return a row every 15°, a column for each direction measured
   * @throws Refused if nothing was measured there
   */
  public Sheet curve(JointId joint) {
    String group = group(Ask.present("joint", joint, "KNEE"));
    Map<String, Strength> here = new LinkedHashMap<>();
    strengths.forEach(
        (name, strength) -> {
          if (name.startsWith(group + " ") && strength.from() < strength.to()) {
            here.put(name.substring(group.length() + 1), strength);
          }
        });
    if (here.isEmpty()) {
      throw new Refused(
          "No strength against the angle was found for the "
              + joint.word()
              + ": take another joint, such as KNEE.");
    }
    List<Column> columns = new ArrayList<>(List.of(new Column("angle", "°", 0)));
    here.keySet().forEach(action -> columns.add(new Column(action, "N·m", 0)));
    double from = here.values().stream().mapToDouble(Strength::from).min().orElseThrow();
    double to = here.values().stream().mapToDouble(Strength::to).max().orElseThrow();
    List<List<Object>> rows = new ArrayList<>();
    for (double a = STEP * Math.ceil(Math.toDegrees(from) / STEP - 1e-9);
        a <= Math.toDegrees(to) + 1e-9;
        a += STEP) {
      List<Object> row = new ArrayList<>(List.of(a));
      for (Strength strength : here.values()) {
        double angle = Math.toRadians(a);
        boolean measured = angle >= strength.from() - 1e-9 && angle <= strength.to() + 1e-9;
        row.add(measured ? strength.at(angle) : null);
      }
      rows.add(row);
    }
    List<String> notes = new ArrayList<>();
    if (joint == JointId.SHOULDER) {
      notes.add(
          "The angle is between the arm and the hanging arm; of horizontal motions it is 0° straight"
              + " out to the side, 90° straight ahead.");
    } else if (group.equals("trunk")) {
      notes.add("The angle is the bend of all lumbar levels together, 0° standing.");
    }
    here.forEach(
        (action, s) ->
            notes.add(action + ": " + s.evidence().source() + ", " + s.evidence().status() + "."));
    notes.addAll(notes());
    return new Sheet("Strength, " + joint.word(), columns, rows, notes).about(this);
  }

  private List<String> notes() {
    return List.of(
        "One side, held still, "
            + body.person().condition().training().word()
            + ", "
            + body.person().condition().years()
            + " years. Scaled by body mass times stature. Between people strengths vary by 20 to"
            + " 30 % (from memory). Motions that are missing were not measured: their strength is"
            + " not known.",
        Caution.TEXT);
  }

  @Override
  public String text() {
    return table().text();
  }

  @Override
  public Optional<String> html() {
    return table().html();
  }

  @Override
  public String toString() {
    return text();
  }
}
