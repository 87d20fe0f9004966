package org.leverbook.muscle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.m;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.quantity.Refused;

/** What a coach gets who asks for a muscle by name. */
class MuscleGroupTest {

  private static List<Object> row(Sheet sheet, String joint, String action) {
    return sheet.rows().stream()
        .filter(r -> r.get(0).equals(joint) && r.get(1).equals(action))
        .findFirst()
        .orElseThrow(() -> new AssertionError(joint + ", " + action + " is not in\n" + sheet));
  }

  private static double number(Sheet sheet, String joint, String action, String column) {
    int index = sheet.rows().indexOf(row(sheet, joint, action));
    return (double) sheet.cell(index, column);
  }

  @ParameterizedTest(name = "\"{0}\": {1} of the table''s muscles")
  @CsvSource({
    "lats, 5",
    "LATS, 5",
    "lat, 5",
    "latissimus dorsi, 4",
    "gluteus maximus, 1",
    "Gluteus-Maximus, 1",
    "gluteus_maximus, 1",
    "glute, 1",
    "glutes (side), 3",
    "quad, 4",
    "vastus, 3",
    "psoas, 1",
    "spinal erectors, 8",
    "erector spinae, 5",
    "mid traps / upper back, 1",
    "'deltoid, rear part', 1",
    "rear delt, 1",
    "biceps, 2",
    "biceps femoris, 2"
  })
  void a_muscle_answers_to_the_gyms_name_and_to_the_anatomical_one(String name, int parts) {
    assertThat(MuscleGroup.named(name).parts()).hasSize(parts);
  }

  @Test
  void every_muscle_and_every_trade_group_is_found_by_its_own_name() {
    for (MuscleRow muscle : MuscleTable.SHIPPED.all()) {
      assertThat(MuscleGroup.named(muscle.name()).parts()).containsExactly(muscle);
      assertThat(MuscleGroup.named(muscle.key()).parts()).contains(muscle);
      assertThat(MuscleGroup.named(muscle.group()).parts()).contains(muscle);
    }
    for (DataRow row : DataTable.read("muscle/names.csv").rows()) {
      assertThat(MuscleGroup.named(row.text("name")).parts()).as(row.text("name")).isNotEmpty();
    }
  }

  @Test
  void a_misspelt_name_gets_the_nearest_ones() {
    assertThatThrownBy(() -> MuscleGroup.named("latisimus dorsi"))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "There is no muscle called \"latisimus dorsi\". Did you mean \"latissimus dorsi\"?"
                + " muscles() lists all.");
    assertThatThrownBy(() -> MuscleGroup.named("hamstirngs"))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("Did you mean \"hamstrings\"?");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "???", "engine"})
  void a_name_that_is_near_to_none_is_sent_to_the_list(String name) {
    assertThatThrownBy(() -> MuscleGroup.named(name))
        .isInstanceOf(Refused.class)
        .hasMessage("There is no muscle called \"" + name + "\". muscles() lists all.");
  }

  @Test
  void no_name_at_all_is_refused_with_an_example() {
    assertThatThrownBy(() -> MuscleGroup.named(null))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("\"lats\"");
  }

  @Test
  void the_lats_extend_the_shoulder_and_hardly_the_spine() {
    Sheet sheet = MuscleGroup.named("latissimus dorsi").actions();
    // One side; both together 6.3 N·m (Bogduk, Johnson and Spalding 1998, abstract).
    assertThat(number(sheet, "lumbar spine", "extend", "greatest moment"))
        .isCloseTo(6.3 / 2, within(1e-9));
    assertThat(row(sheet, "lumbar spine", "extend")).contains("6.3 N·m, both sides");
    // Four parts' listed arms, weighted by their areas: (4.6 x 28 + 3.1 x 34 + 3.8 x 36) / 11.5 mm.
    assertThat(number(sheet, "shoulder", "extend", "longest arm"))
        .isCloseTo(0.1 * (4.6 * 28 + 3.1 * 34 + 3.8 * 36) / 11.5, within(1e-9));
    assertThat(number(sheet, "shoulder", "extend", "strongest at")).isCloseTo(60, within(1e-9));
    assertThat(sheet.text())
        .contains("at most 6.3 N·m in all", "Bogduk, Johnson & Spalding 1998", Caution.TEXT);
  }

  @Test
  void the_glutes_turn_the_hip_and_no_joint_of_the_back() {
    Sheet sheet = MuscleGroup.named("glutes").actions();
    assertThat(sheet.rows()).extracting(r -> r.get(0)).containsOnly("hip");
    assertThat(sheet.text()).contains("crosses no lumbar joint");
  }

  @Test
  void a_muscle_that_changes_sides_has_both_actions() {
    Sheet sheet = MuscleGroup.named("adductor longus").actions();
    assertThat(number(sheet, "hip", "flex", "arm standing")).isCloseTo(4.1, within(1e-9));
    assertThat(number(sheet, "hip", "flex", "strongest at")).isCloseTo(0, within(1e-9));
    assertThat(number(sheet, "hip", "extend", "longest arm")).isCloseTo(2.5, within(1e-9));
    assertThat(number(sheet, "hip", "extend", "strongest at")).isCloseTo(90, within(1e-9));
    assertThat(row(sheet, "hip", "extend").get(2)).isNull();
  }

  @Test
  void the_whole_gives_at_most_what_its_parts_give_one_by_one() {
    MuscleGroup erectors = MuscleGroup.named("hamstrings");
    double together = number(erectors.actions(), "hip", "extend", "greatest moment");
    double apart =
        erectors.byPart().rows().stream()
            .filter(r -> r.get(0).equals("hip") && r.get(1).equals("extend"))
            .mapToDouble(r -> (double) r.get(6))
            .sum();
    // The three have one table of arms, so here they are strongest at the same angle.
    assertThat(together).isCloseTo(apart, within(1e-9));
    assertThat(together).isCloseTo((648 + 294 + 1077) * 0.070, within(0.5));
  }

  @Test
  void arms_from_memory_are_called_so_and_every_row_has_a_source() {
    for (MuscleRow muscle : MuscleTable.SHIPPED.all()) {
      Sheet sheet = MuscleGroup.named(muscle.key()).byPart();
      for (List<Object> row : sheet.rows()) {
        assertThat((String) row.get(9)).matches("(found|from memory|partly from memory).*");
        assertThat((String) row.get(10)).matches("\\d+(, \\d+)*");
      }
      assertThat(sheet.notes()).last().isEqualTo(Caution.TEXT);
    }
    assertThat(row(MuscleGroup.named("biceps").actions(), "elbow", "flex").get(9))
        .isEqualTo("found");
    assertThat(row(MuscleGroup.named("glutes").actions(), "hip", "extend").get(9))
        .isEqualTo("from memory");
  }

  @Test
  void only_the_hoop_around_the_belly_turns_no_joint() {
    Set<String> idle = new HashSet<>();
    for (MuscleRow muscle : MuscleTable.SHIPPED.all()) {
      if (MuscleGroup.named(muscle.key()).byPart().rows().isEmpty()) {
        idle.add(muscle.key());
      }
    }
    assertThat(idle).containsExactly("transversus_abdominis");
  }

  @Test
  void the_same_muscle_of_a_larger_person_is_stronger_and_has_longer_arms() {
    Person tall = Person.of(Sex.MALE, kg(90), m(1.925));
    Sheet before = MuscleGroup.named("soleus").actions();
    Sheet after = MuscleGroup.named("soleus").of(tall).actions();
    assertThat(number(after, "ankle", "plantarflex", "greatest moment"))
        .isCloseTo(
            1.2 * 1.1 * number(before, "ankle", "plantarflex", "greatest moment"), within(1e-9));
    assertThat(after.title())
        .isEqualTo("What the soleus can do; one side of a man of 90 kg and 193 cm");
  }

  @Test
  void the_list_has_every_muscle_under_its_trade_group() {
    Sheet list = MuscleGroup.all();
    assertThat(list.rows()).hasSize(MuscleTable.SHIPPED.all().size()).hasSize(79);
    assertThat(list.rows()).extracting(r -> r.get(0)).contains("lats", "quads", "spinal erectors");
    assertThat(list.text()).contains("muscle(\"lats\").actions()", Caution.TEXT);
  }

  @Test
  void a_broken_row_of_the_table_is_named_with_its_line() {
    String head =
        "name,group,region,pcsa_cm2,sigma_n_per_cm2,pcsa_source,status,confidence,"
            + "type1_fibre_pct,joints_crossed,main_actions,can_extend_spine,notes\n";
    DataTable names = DataTable.read("muscle/names.csv");
    assertThatThrownBy(
            () ->
                MuscleTable.of(
                    DataTable.parse("m.csv", head + "a,g,arm,-2,45,s,found,low,50,elbow,b,no,"),
                    names))
        .isInstanceOf(Refused.class)
        .hasMessage("m.csv, line 2, column pcsa_cm2: must be above zero, but is -2.0.");
    assertThatThrownBy(
            () ->
                MuscleTable.of(
                    DataTable.parse("m.csv", head + "a,g,arm,2,45,s,guess,low,50,elbow,b,no,"),
                    names))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "m.csv, line 2, column status: must be \"found\" or \"from memory\", but is"
                + " \"guess\".");
    String good = "a,g,arm,2,45,s,found,low,50,elbow,b,no,\n";
    assertThatThrownBy(() -> MuscleTable.of(DataTable.parse("m.csv", head + good + good), names))
        .isInstanceOf(Refused.class)
        .hasMessage("m.csv, line 3, column name: the muscle \"a\" stands there twice.");
  }

  @Test
  void an_arm_of_an_unknown_muscle_or_given_twice_is_named_with_its_line() {
    String head =
        "muscle,set,applies_to,joint,axis,positive_action,angle_of,angle_deg,moment_arm_m,source,"
            + "status,confidence\n";
    String good =
        "x,primary,soleus,ankle,flexion_extension,plantarflexion,ankle_plantarflexion,0,0.05,s,"
            + "found,high\n";
    assertThatThrownBy(
            () ->
                ArmTable.of(
                    DataTable.parse("a.csv", head + good.replace("soleus", "soleous")),
                    MuscleTable.SHIPPED))
        .isInstanceOf(Refused.class)
        .hasMessage("a.csv, line 2, column applies_to: there is no muscle \"soleous\".");
    assertThatThrownBy(
            () -> ArmTable.of(DataTable.parse("a.csv", head + good + good), MuscleTable.SHIPPED))
        .isInstanceOf(Refused.class)
        .hasMessage("a.csv, line 3, column angle_deg: the muscle has another arm at this angle.");
  }
}
