package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import tech.tablesaw.api.BooleanColumn;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/** Tables into files and out of files. */
class TableFilesTest {

  @TempDir private Path folder;

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  private Table written(String name, String... lines) throws IOException {
    Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n");
    return TableFiles.read(file(name));
  }

  private String refusal(String name, String... lines) throws IOException {
    try {
      written(name, lines);
    } catch (Refused e) {
      return e.getMessage().replace(file(name), name);
    }
    throw new AssertionError("It was read.");
  }

  /** Names, types, and every cell to the last bit. */
  private static void same(Table read, Table written) {
    assertThat(read.columnNames()).isEqualTo(written.columnNames());
    assertThat(read.types()).isEqualTo(written.types());
    assertThat(read.rowCount()).isEqualTo(written.rowCount());
    for (int c = 0; c < written.columnCount(); c++) {
      for (int r = 0; r < written.rowCount(); r++) {
        assertThat(read.get(r, c))
            .as("row %d, column %s", r, written.column(c).name())
            .isEqualTo(written.get(r, c));
      }
    }
  }

  private static Table withoutNote(Table read) {
    assertThat(read.columnNames().get(read.columnCount() - 1)).isEqualTo("note");
    assertThat(read.stringColumn("note").get(0)).contains(Caution.TEXT);
    assertThat(read.stringColumn("note").asList().stream().skip(1)).allMatch(String::isEmpty);
    Table rest = read.copy();
    rest.removeColumns("note");
    return rest;
  }

  @ParameterizedTest
  @ValueSource(strings = {"a.csv", "a.json"})
  void a_sweep_a_grid_and_a_search_come_back_equal(String name) {
    Hinge pull = Hinge.of(Person.of(Sex.MALE, kg(85), cm(178))).holding(Barbell.of(kg(140)));
    Sweep sweep = Sweep.over("hip height", cm(48), cm(72), 9, h -> pull.hipHeight(h).start());
    sweep.sheet().save(file(name));
    same(withoutNote(TableFiles.read(file(name))), sweep.table());

    // Held everywhere: all reasons are empty, and still texts.
    Sweep held = Sweep.over("hip height", cm(60), cm(72), 3, h -> pull.hipHeight(h).start());
    held.sheet().save(file(name));
    same(withoutNote(TableFiles.read(file(name))), held.table());

    var grid =
        Grid.over(
            Span.of("hip height", cm(46), cm(70), 3),
            Span.of("bar mass", kg(50), kg(150), 2),
            (h, m) -> pull.holding(Barbell.of(m)).hipHeight(h).start());
    grid.sheet(JointId.HIP).save(file(name));
    same(withoutNote(TableFiles.read(file(name))), grid.table(JointId.HIP));
    grid.crossSheet(JointId.HIP).save(file(name));
    same(withoutNote(TableFiles.read(file(name))), grid.crossTable(JointId.HIP));

    var best =
        Optimum.over(
            "height", cm(0), cm(10), h -> h.getValue().doubleValue(), h -> 5 + h * h, true);
    best.save(file(name));
    same(withoutNote(TableFiles.read(file(name))), best.table());
  }

  private static Sheet awkward() {
    List<String> texts =
        List.of(
            "007",
            "12",
            "-1.5e3",
            "",
            " a, \"b\"; c ",
            "two\nlines",
            "old\r\nlines",
            "# no comment",
            "\"",
            "N·m, °, ü, 力",
            "NaN",
            "true",
            "=1+1",
            "\t",
            "1,5",
            "null");
    Random random = new Random(7);
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      rows.add(
          Arrays.asList(
              texts.get(i),
              Double.longBitsToDouble(random.nextLong() & 0xBFEFFFFFFFFFFFFFL),
              random.nextBoolean() ? null : random.nextGaussian(),
              String.format("%03d", i),
              String.valueOf(i),
              null,
              i % 2 == 0 ? "" : null,
              i % 3 == 0 ? "no limit" : (Object) (double) i));
    }
    return new Sheet(
        "Awkward",
        List.of(
            Column.text("comment, in \"quotes\""),
            new Column("force", "N", 1),
            new Column("ratio", "", 2),
            Column.text("bib"),
            Column.text("count as text"),
            new Column("never", "", 1),
            Column.text("always empty"),
            new Column("largest", "kg", 1)),
        rows,
        List.of("A note,\nin two lines.", Caution.TEXT));
  }

  @ParameterizedTest
  @ValueSource(strings = {"awkward.csv", "awkward.json"})
  void awkward_cells_come_back_equal_with_their_types(String name) {
    Sheet sheet = awkward();
    sheet.save(file(name));
    Table read = TableFiles.read(file(name));
    same(withoutNote(read), Tables.of(sheet));
    assertThat(read.name()).isEqualTo("awkward");

    TableFiles.save(read, file("again-" + name));
    same(TableFiles.read(file("again-" + name)), read);
  }

  @Test
  void a_table_of_the_users_own_is_saved_with_the_caution() throws IOException {
    Table own =
        Table.create(
            "own",
            StringColumn.create("lifter", "A", "007"),
            IntColumn.create("repetitions", 5, 8),
            DoubleColumn.create("bar (kg)", 100.25, Double.NaN),
            BooleanColumn.create("belt", true, false));
    assertThat(TableFiles.save(own, file("own.csv")).text()).startsWith("saved ");
    assertThat(folder.resolve("own.csv"))
        .content()
        .isEqualTo(
            "lifter,repetitions,bar (kg),belt,note\nA,5,100.25,true,\""
                + Caution.TEXT
                + "\"\n\"007\",8,,false,\n");
    Table read = TableFiles.read(file("own.csv"));
    assertThat(read.doubleColumn("repetitions").asList()).containsExactly(5.0, 8.0);
    own.doubleColumn("bar (kg)").set(1, Double.POSITIVE_INFINITY);
    assertThatThrownBy(() -> TableFiles.save(own, file("own.csv")))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "Row 2, column bar (kg): an infinite number cannot be saved. Set it missing, or leave"
                + " the row out.");
    assertThat(folder.resolve("own.csv")).content().as("kept").contains("100.25");
    assertThat(folder).isDirectoryNotContaining("glob:**.tmp");
  }

  @Test
  void what_tablesaw_writes_itself_is_read_too() {
    Table own =
        Table.create(
            "own",
            StringColumn.create("lifter", "A, tall", "B"),
            DoubleColumn.create("bar (kg)", 100.25, 0.1 + 0.2));
    own.write().csv(file("tablesaw.csv"));
    same(TableFiles.read(file("tablesaw.csv")), own);
  }

  @Test
  void a_foreign_file_with_decimal_commas_is_understood() throws IOException {
    Table read =
        written(
            "club.csv",
            "\uFEFFlifter;bar (kg);stature (cm);bib",
            "A;102,5;178;007",
            "\"B; tall\";80;\"181,5\";012",
            "C;;170;100");
    assertThat(read.columnNames()).containsExactly("lifter", "bar (kg)", "stature (cm)", "bib");
    assertThat(read.doubleColumn("bar (kg)").get(0)).isEqualTo(102.5);
    assertThat(read.doubleColumn("bar (kg)").isMissing(2)).isTrue();
    assertThat(read.doubleColumn("stature (cm)").get(1)).isEqualTo(181.5);
    assertThat(read.stringColumn("bib").asList())
        .as("zeros kept")
        .containsExactly("007", "012", "100");
    assertThat(read.stringColumn("lifter").get(1)).isEqualTo("B; tall");
    assertThat(written("tabs.csv", "a\tb (m)", "x, y\t0,25").doubleColumn("b (m)").get(0))
        .isEqualTo(0.25);
    assertThat(written("quoted.csv", "\"mass\",\"name\"", "\"12.5\",\"A\"").types().toString())
        .isEqualTo("[DOUBLE, STRING]");
  }

  @Test
  void a_text_among_numbers_is_told_with_its_row_and_column() throws IOException {
    assertThat(
            refusal(
                "lift.csv",
                "hip height (cm),moment (N·m)",
                "1,1",
                "2,2",
                "3,3",
                "4,4",
                "5,5",
                "6,6",
                "7,about 300",
                "8,8"))
        .isEqualTo(
            "lift.csv, row 7, column moment (N·m): \"about 300\" is no number, but the heading"
                + " promises numbers. Leave the cell empty where nothing is known, or take the unit"
                + " out of the heading.");
    assertThat(refusal("lift.csv", "moment (N·m),joint", "\"312,5\",hip"))
        .isEqualTo(
            "lift.csv, row 1, column moment (N·m): \"312,5\" is no number: is it a decimal comma?"
                + " Write a decimal point, or put semicolons between the columns.");
    assertThat(refusal("lift.csv", "moment (N·m);arm (cm)", "312,5;40.5"))
        .isEqualTo(
            "lift.csv, row 1, column arm (cm): \"40.5\" has a decimal point, but other numbers of"
                + " this file have a decimal comma. Use one of them throughout, and no marks of"
                + " thousands.");
    assertThat(refusal("lift.csv", "force (N),joint", "1'250,hip"))
        .isEqualTo(
            "lift.csv, row 1, column force (N): \"1'250\" is no number: leave out the marks of"
                + " thousands.");
    assertThat(refusal("lift.json", "[{\"moment (N·m)\": 5}, {\"moment (N·m)\": \"much\"}]"))
        .isEqualTo(
            "lift.json, row 2, column moment (N·m): \"much\" is no number, but the heading promises"
                + " numbers. Write null where nothing is known.");
  }

  @Test
  void a_broken_file_is_told_where_it_breaks() throws IOException {
    assertThat(refusal("a.csv", "a,b,c", "1,2,3", "1,2"))
        .isEqualTo(
            "a.csv, row 2 has 2 cells, but there are 3 headings. Empty cells need their \",\" too.");
    assertThat(refusal("a.csv", "a,b", "1,2,3"))
        .isEqualTo(
            "a.csv, row 1 has 3 cells, but there are 2 headings. A cell that holds a \",\" must stand"
                + " in quotes.");
    assertThat(refusal("a.csv", "a,b", "\"open,2")).startsWith("a.csv, row 1");
    assertThat(refusal("a.csv", "a,b,a", "1,2,3"))
        .isEqualTo("a.csv: columns 1 and 3 are both called \"a\". Give each its own heading.");
    Files.writeString(folder.resolve("empty.csv"), "");
    assertThatThrownBy(() -> TableFiles.read(file("empty.csv")))
        .isInstanceOf(Refused.class)
        .hasMessageEndingWith("empty.csv is empty: a table begins with a line of headings.");
    Files.write(
        folder.resolve("latin.csv"), "arm (°)\n1\nü\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThatThrownBy(() -> TableFiles.read(file("latin.csv")))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("latin.csv is not in UTF-8: save it again as \"CSV UTF-8\"");
    assertThat(refusal("a.json", "[{\"a\": 1},", "{\"a\": "))
        .startsWith("a.json breaks off or is no JSON at line ");
    assertThat(refusal("a.json", "[{\"a\": [1, 2]}]"))
        .isEqualTo(
            "a.json, row 1, column a: a value must be a number or a text, not a list or an object.");
    assertThat(refusal("a.json", "{\"a\": 1}"))
        .isEqualTo("a.json holds no table: it must be an array with one object for each row.");
    assertThatThrownBy(() -> TableFiles.read("nowhere.csv"))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("There is no table \"nowhere.csv\" in ");
    assertThat(refusal("a.txt", "a"))
        .isEqualTo("A table is read from .csv or .json, not from \"a.txt\".");
  }

  @Test
  void a_long_table_is_written_and_read_whole() {
    int rows = 100_000;
    double[] values = new Random(3).doubles(rows).toArray();
    Table own = Table.create("long", DoubleColumn.create("share", values));
    TableFiles.save(own, file("long.csv"));
    Table read = TableFiles.read(file("long.csv"));
    assertThat(read.rowCount()).isEqualTo(rows);
    assertThat(read.doubleColumn("share").asDoubleArray()).isEqualTo(values);
  }
}
