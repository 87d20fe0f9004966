package org.leverbook.statics;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Joint;
import org.leverbook.body.Person;
import org.leverbook.body.Segment;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.data.Version;
import org.leverbook.display.Caution;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Saved;
import org.leverbook.display.Shown;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.quantity.Refused;

/**
 * A position as numbers that anyone can redo: JSON in metres, kilograms, newtons; axes x forward, y
 * up, z to the right.
 *
 * @param position what is written down
 */
public record Worksheet(Position position) implements Shown {

  /** Raised when a key changes its meaning. */
  public static final int SCHEMA = 1;

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  /**
   * Saves the worksheet.
   *
   * @param name a file name that ends in {@code .json}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public Saved save(String name) {
    if (!name.endsWith(".json")) {
      throw new Refused("A worksheet is saved as .json, not as \"" + name + "\".");
    }
    return new Saved(List.of(OutputFolder.write(name, text() + "\n")));
  }

  @Override
  public String text() {
    try {
      return JSON.writeValueAsString(json());
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public String toString() {
    return text();
  }

  private ObjectNode json() {
    ObjectNode root = JSON.createObjectNode();
    root.put("schema", SCHEMA);
    root.put("leverbook", Version.number());
    data(root.putObject("data"));
    person(root.putObject("person"));
    vector(root.putArray("gravity"), Gravity.VECTOR);
    segments(root.putArray("segments"));
    ArrayNode joints = root.putArray("joints");
    SegmentTree tree = position.body().tree();
    for (int i = 1; i < tree.size(); i++) {
      joint(joints.addObject(), i);
    }
    forces(root.putArray("forces"));
    balance(root.putObject("balance"));
    ArrayNode notes = root.putArray("notes");
    position.facts().forEach(fact -> notes.add(fact.toString()));
    position.notes().forEach(notes::add);
    if (!position.held()) {
      notes.add(position.holding().sentence());
      notes.add(KnownMoments.LEFT_OUT);
    }
    position.supports().forEach(support -> notes.add(support.description()));
    notes.add(
        "In a leg's parts the floor's push is told as what it carries, by the share of the vertical push that the foot"
            + " takes; \"floor\" is what then remains.");
    notes.add(Caution.TEXT);
    return root;
  }

  private void data(ObjectNode data) {
    data.put("body", position.body().person().table().source());
    data.put(
        "lengths",
        "ANSUR II (Gordon et al. 2014) survey means by joint-centre rules, fractions of stature");
    data.put(
        "spine",
        "heights Panjabi et al. 1991, 1992; slice centres Pearsall et al. 1996; shares of bending Pearcy et al. 1984");
    data.put(
        "ranges",
        "American Academy of Orthopaedic Surgeons 1965, and the defaults of joint_rom.csv");
  }

  private void person(ObjectNode json) {
    Person person = position.body().person();
    json.put("sex", person.sex().word());
    json.put("mass_kg", position.body().tree().mass());
    json.put("stature_m", position.body().links().stature());
    ObjectNode changes = json.putObject("changes");
    person
        .changes()
        .forEach((part, factor) -> changes.put(part.name().toLowerCase(Locale.ROOT), factor));
    if (!person.changes().isEmpty()) {
      changes.put("stature", person.statureChanges() ? "follows" : "kept");
      changes.put("mass", person.massChanges() ? "follows" : "kept");
    }
  }

  private void segments(ArrayNode segments) {
    SegmentTree tree = position.body().tree();
    for (int i = 0; i < tree.size(); i++) {
      ObjectNode json = segments.addObject();
      json.put("name", tree.segment(i).name());
      json.put("mass_kg", tree.segment(i).mass());
      vector(json.putArray("com"), position.placement().centreOfMass(i));
    }
  }

  private void joint(ObjectNode json, int distal) {
    SegmentTree tree = position.body().tree();
    Segment segment = tree.segment(distal);
    Joint joint = segment.joint();
    json.put("name", joint.name());
    json.put("side", joint.side() == Side.MIDLINE ? null : joint.side().word());
    json.put("proximal", tree.segment(segment.parent()).name());
    json.put("distal", segment.name());
    vector(json.putArray("centre"), position.placement().origin(distal));
    ObjectNode axes = json.putObject("axes");
    ObjectNode angles = json.putObject("angles_deg");
    for (int k = 0; k < joint.freedoms().size(); k++) {
      String axis = joint.freedoms().get(k).motion().axis();
      vector(axes.putArray(axis), position.placement().axis(tree.firstAngle(distal) + k));
      double angle = position.placement().pose().angle(tree.firstAngle(distal) + k);
      angles.put(axis, Math.toDegrees(angle));
    }
    Optional<JointMoment> moment =
        position.all().stream().filter(m -> m.joint() == joint).findFirst();
    if (moment.isPresent()) {
      moment(json, moment.get());
    } else {
      List.of(
              "force",
              "moment",
              "parts",
              "tends_to",
              "opposed_by",
              "about",
              "size_Nm",
              "arm_m",
              "contact_N")
          .forEach(json::putNull);
    }
  }

  private void moment(ObjectNode json, JointMoment moment) {
    vector(json.putArray("force"), moment.force());
    vector(json.putArray("moment"), moment.moment());
    ObjectNode parts = json.putObject("parts");
    moment.parts().forEach((source, part) -> part(parts.putObject(source), source, part));
    json.put("tends_to", moment.tendsTo());
    json.put("opposed_by", moment.opposedBy());
    json.put("about", moment.motion().axis());
    json.put("size_Nm", moment.size());
    if (moment.mainLoad().isEmpty()) {
      json.putNull("arm_m");
    } else {
      json.put("arm_m", moment.arm());
    }
    ContactForce contact = ContactForce.of(moment, position.placement());
    ObjectNode through = json.putObject("contact_N");
    through.put("compression", contact.compression());
    through.put("shear_forward", contact.forward());
    through.put("shear_outward", contact.outward());
  }

  private void part(ObjectNode json, String source, JointMoment.Part part) {
    vector(json.putArray("moment"), part.moment());
    if (position.loads().stream().anyMatch(load -> load.source().equals(source))) {
      json.put("arm_m", part.arm());
    }
  }

  private void forces(ArrayNode forces) {
    for (Force force : position.forces()) {
      ObjectNode json = forces.addObject();
      json.put("source", force.source());
      json.put("kind", force.kind().name().toLowerCase(Locale.ROOT));
      json.put("segment", position.body().tree().segment(force.segment()).name());
      vector(json.putArray("point"), force.point());
      vector(json.putArray("force"), force.force());
      vector(json.putArray("moment"), force.moment());
    }
  }

  private void balance(ObjectNode json) {
    if (position.onGround().isPresent()) {
      Balance balance = position.balance();
      vector(json.putArray("centre_of_pressure"), balance.centreOfPressure());
      ArrayNode polygon = json.putArray("support_polygon");
      balance.polygon().forEach(p -> polygon.addArray().add(p.getX()).add(p.getY()));
      json.put("margin_m", balance.margin());
    } else {
      json.putNull("centre_of_pressure");
      json.putArray("support_polygon");
      json.putNull("margin_m");
    }
    json.put("held", position.held());
  }

  private static void vector(ArrayNode json, Vector3D vector) {
    json.add(vector.getX()).add(vector.getY()).add(vector.getZ());
  }
}
