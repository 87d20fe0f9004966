package org.leverbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.load.Load;
import org.leverbook.statics.Position;
import org.leverbook.statics.SupportedMovements;
import org.leverbook.support.FixedBar;
import org.leverbook.support.Footing;
import org.leverbook.support.Pad;

/**
 * The sums of a worksheet done again from its JSON alone, as a reader with another program would:
 * nothing here calls Leverbook's mechanics. One hinge, the same on pads and with a fixed bar, 40
 * random one-sided positions, every kind of load on somebody who stands, hinges and moves, and
 * movements on pads, bench, seat, plate, sled and bar.
 */
class WorksheetTest {

  private static final List<JsonNode> SHEETS = sheets();

  private static List<JsonNode> sheets() {
    List<Position> positions = new ArrayList<>(new RandomScenes(7).positions(40));
    Person lifter = Person.of(Sex.MALE, kg(85), cm(178));
    Position start = Hinge.of(lifter).holding(Barbell.of(kg(140))).hipHeight(cm(58)).start();
    positions.add(start.on(Pad.chest(deg(30))));
    positions.add(start.on(Pad.chest(deg(30))).leaning(percent(40)));
    positions.add(
        start.without("floor").on(Footing.feet(lifter.body()).friction(0.4), Pad.chest(deg(45))));
    positions.add(start.on(new FixedBar()).without("bar"));
    positions.addAll(LoadedPositions.still());
    positions.addAll(LoadedPositions.moving());
    positions.addAll(SupportedMovements.moving());
    positions.add(start);
    ObjectMapper json = new ObjectMapper();
    List<JsonNode> sheets = new ArrayList<>();
    for (Position position : positions) {
      try {
        sheets.add(json.readTree(position.worksheet().text()));
      } catch (JsonProcessingException e) {
        throw new AssertionError(e);
      }
    }
    return sheets;
  }

  private static Vector3D vector(JsonNode array) {
    assertThat(array.size()).isEqualTo(3);
    return new Vector3D(array.get(0).asDouble(), array.get(1).asDouble(), array.get(2).asDouble());
  }

  /** Each segment's joint towards the pelvis: name of the segment it hangs on. */
  private static Map<String, String> parents(JsonNode sheet) {
    Map<String, String> parents = new HashMap<>();
    sheet
        .get("joints")
        .forEach(j -> parents.put(j.get("distal").asText(), j.get("proximal").asText()));
    return parents;
  }

  private static boolean hangsOn(Map<String, String> parents, String segment, String distal) {
    for (String at = segment; at != null; at = parents.get(at)) {
      if (at.equals(distal)) {
        return true;
      }
    }
    return false;
  }

  /** Force, and moment about a point, of all weights and forces distal to a joint. */
  private static Vector3D[] sums(JsonNode sheet, String distal, Vector3D about) {
    Map<String, String> parents = parents(sheet);
    Vector3D gravity = vector(sheet.get("gravity"));
    Vector3D force = Vector3D.ZERO;
    Vector3D moment = Vector3D.ZERO;
    for (JsonNode segment : sheet.get("segments")) {
      if (hangsOn(parents, segment.get("name").asText(), distal)) {
        Vector3D weight = gravity.scalarMultiply(segment.get("mass_kg").asDouble());
        force = force.add(weight);
        moment = moment.add(vector(segment.get("com")).subtract(about).crossProduct(weight));
      }
    }
    for (JsonNode one : sheet.get("forces")) {
      if (hangsOn(parents, one.get("segment").asText(), distal)) {
        Vector3D own = vector(one.get("force"));
        force = force.add(own);
        moment =
            moment
                .add(vector(one.get("point")).subtract(about).crossProduct(own))
                .add(vector(one.get("moment")));
      }
    }
    return new Vector3D[] {force, moment};
  }

  @Test
  void everything_cancels_when_the_position_is_held() {
    for (JsonNode sheet : SHEETS) {
      assertThat(sheet.get("balance").get("held").asBoolean()).isTrue();
      Vector3D[] all = sums(sheet, "pelvis", new Vector3D(0.3, 1.1, -0.2));
      assertThat(all[0].getNorm()).as("newtons").isLessThan(1e-6);
      assertThat(all[1].getNorm()).as("newton metres").isLessThan(1e-6);
    }
  }

  @Test
  void every_load_stands_among_the_forces_and_what_moves_tells_its_inertia() {
    Set<String> loads = new TreeSet<>();
    Set<String> inertia = new TreeSet<>();
    int moving = 0;
    for (JsonNode sheet : SHEETS) {
      boolean moves = false;
      for (JsonNode force : sheet.get("forces")) {
        String kind = force.get("kind").asText();
        assertThat(kind).isIn("load", "support", "inertia");
        if (kind.equals("load")) {
          loads.add(force.get("source").asText());
        } else if (kind.equals("inertia")) {
          inertia.add(force.get("source").asText());
          moves = true;
        }
      }
      moving += moves ? 1 : 0;
    }
    assertThat(moving)
        .isEqualTo(4 * LoadedPositions.loads().size() + SupportedMovements.all().size());
    assertThat(loads).containsAll(LoadedPositions.loads().stream().map(Load::source).toList());
    assertThat(inertia)
        .contains(
            "body inertia",
            "bar inertia",
            "dumbbell inertia",
            "cable inertia",
            "chains inertia",
            "sled inertia");
  }

  @Test
  void every_joints_force_and_moment_follow_from_segments_and_forces() {
    int joints = 0;
    for (JsonNode sheet : SHEETS) {
      for (JsonNode joint : sheet.get("joints")) {
        Vector3D[] own = sums(sheet, joint.get("distal").asText(), vector(joint.get("centre")));
        assertThat(own[0].distance(vector(joint.get("force")))).isLessThan(1e-6);
        assertThat(own[1].distance(vector(joint.get("moment")))).isLessThan(1e-6);
        joints++;
      }
    }
    assertThat(joints).isEqualTo(SHEETS.size() * 45);
  }

  @Test
  void a_lifter_who_tips_still_gets_the_sums_that_no_support_reaches() throws Exception {
    Position tips = LoadedPositions.pulledOver();
    JsonNode sheet = new ObjectMapper().readTree(tips.worksheet().text());
    assertThat(sheet.get("balance").get("held").asBoolean()).isFalse();
    assertThat(sheet.get("notes").toString()).contains("Tips backward");
    int told = 0;
    for (JsonNode joint : sheet.get("joints")) {
      String distal = joint.get("distal").asText();
      boolean leg = distal.matches("(right|left) (thigh|shank|foot|toes)");
      assertThat(joint.get("moment").isNull()).as(distal).isEqualTo(leg);
      if (!leg) {
        Vector3D[] own = sums(sheet, distal, vector(joint.get("centre")));
        assertThat(own[1].distance(vector(joint.get("moment")))).isLessThan(1e-6);
        told++;
      }
    }
    assertThat(told).isEqualTo(45 - 8);
  }

  @Test
  void every_joints_parts_add_up_to_its_moment() {
    for (JsonNode sheet : SHEETS) {
      for (JsonNode joint : sheet.get("joints")) {
        Vector3D sum = Vector3D.ZERO;
        for (JsonNode part : joint.get("parts")) {
          sum = sum.add(vector(part.get("moment")));
        }
        assertThat(sum.distance(vector(joint.get("moment")))).isLessThan(1e-9);
      }
    }
  }

  @Test
  void the_size_told_is_the_moment_about_the_axis_named() {
    for (JsonNode sheet : SHEETS) {
      for (JsonNode joint : sheet.get("joints")) {
        joint.get("axes").forEach(a -> assertThat(vector(a).getNorm()).isCloseTo(1, within(1e-12)));
        Vector3D axis = vector(joint.get("axes").get(joint.get("about").asText()));
        double about = vector(joint.get("moment")).dotProduct(axis);
        assertThat(joint.get("size_Nm").asDouble()).isCloseTo(Math.abs(about), within(1e-9));
      }
    }
  }

  @Test
  void the_bars_arm_above_the_legs_is_the_distance_to_its_line() {
    JsonNode hinge = SHEETS.get(SHEETS.size() - 1);
    int levels = 0;
    for (JsonNode joint : hinge.get("joints")) {
      if (joint.get("name").asText().matches("[LT]\\d.*")) {
        // Both hands' halves of the bar: one vertical line midway between them.
        Vector3D line = Vector3D.ZERO;
        for (JsonNode force : hinge.get("forces")) {
          if (force.get("source").asText().equals("bar")) {
            line = line.add(vector(force.get("point")).scalarMultiply(0.5));
          }
        }
        Vector3D away = line.subtract(vector(joint.get("centre")));
        double arm = Math.hypot(away.getX(), away.getZ());
        assertThat(joint.get("parts").get("bar").get("arm_m").asDouble())
            .isCloseTo(arm, within(1e-9));
        assertThat(joint.get("arm_m").asDouble()).isCloseTo(arm, within(1e-9));
        levels++;
      }
    }
    assertThat(levels).isEqualTo(17);
  }

  @Test
  void the_segments_weigh_what_the_person_weighs() {
    for (JsonNode sheet : SHEETS) {
      double sum = 0;
      for (JsonNode segment : sheet.get("segments")) {
        sum += segment.get("mass_kg").asDouble();
      }
      double told = sheet.get("person").get("mass_kg").asDouble();
      assertThat(sum).isCloseTo(told, within(1e-9));
    }
  }

  @Test
  void centre_of_pressure_and_margin_follow_from_the_floors_forces_and_the_polygon() {
    int aloft = 0;
    for (JsonNode sheet : SHEETS) {
      double up = 0;
      Vector3D centre = Vector3D.ZERO;
      for (JsonNode force : sheet.get("forces")) {
        if (force.get("source").asText().equals("floor")) {
          double push = force.get("force").get(1).asDouble();
          up += push;
          centre = centre.add(vector(force.get("point")).scalarMultiply(push));
        }
      }
      JsonNode balance = sheet.get("balance");
      if (balance.get("centre_of_pressure").isNull()) {
        assertThat(up).as("nothing stands on the floor").isZero();
        aloft++;
        continue;
      }
      Vector3D told = vector(balance.get("centre_of_pressure"));
      assertThat(centre.scalarMultiply(1 / up).distance(told)).isLessThan(1e-6);
      assertThat(balance.get("margin_m").asDouble())
          .isCloseTo(nearestEdge(balance.get("support_polygon"), told), within(1e-9));
    }
    assertThat(aloft).as("on seat and plate, on seat and sled").isEqualTo(2);
  }

  /** Least distance to the line of an edge: inside a convex polygon the same as to the edge. */
  private static double nearestEdge(JsonNode polygon, Vector3D point) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < polygon.size(); i++) {
      JsonNode from = polygon.get(i);
      JsonNode to = polygon.get((i + 1) % polygon.size());
      double ex = to.get(0).asDouble() - from.get(0).asDouble();
      double ez = to.get(1).asDouble() - from.get(1).asDouble();
      double px = point.getX() - from.get(0).asDouble();
      double pz = point.getZ() - from.get(1).asDouble();
      nearest = Math.min(nearest, (ex * pz - ez * px) / Math.hypot(ex, ez));
    }
    return nearest;
  }

  @Test
  void compression_and_shear_through_a_joint_are_its_force_in_the_bones_frame() {
    for (JsonNode sheet : SHEETS) {
      for (JsonNode joint : sheet.get("joints")) {
        JsonNode through = joint.get("contact_N");
        double size =
            Math.sqrt(
                Math.pow(through.get("compression").asDouble(), 2)
                    + Math.pow(through.get("shear_forward").asDouble(), 2)
                    + Math.pow(through.get("shear_outward").asDouble(), 2));
        assertThat(size).isCloseTo(vector(joint.get("force")).getNorm(), within(1e-6));
      }
    }
  }

  @Test
  void the_keys_come_in_the_order_the_reader_was_promised() {
    for (JsonNode sheet : SHEETS) {
      assertThat(names(sheet))
          .containsExactly(
              "schema",
              "leverbook",
              "data",
              "person",
              "gravity",
              "segments",
              "joints",
              "forces",
              "balance",
              "notes");
      assertThat(names(sheet.get("joints").get(0)))
          .containsExactly(
              "name",
              "side",
              "proximal",
              "distal",
              "centre",
              "axes",
              "angles_deg",
              "force",
              "moment",
              "parts",
              "tends_to",
              "opposed_by",
              "about",
              "size_Nm",
              "arm_m",
              "contact_N");
    }
  }

  private static List<String> names(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }
}
