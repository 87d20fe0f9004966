package org.leverbook.study;

import java.util.List;
import org.leverbook.body.JointId;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import tech.tablesaw.api.Table;

/** What grids of two and of three quantities have in common: cells, their tables and their map. */
public abstract sealed class Cells implements Shown permits Grid, GridOfThree {

  final List<Cell> cells;

  Cells(List<Cell> cells) {
    this.cells = List.copyOf(cells);
  }

  /** What is varied, the slowest first. */
  abstract List<Span<?>> spans();

  /**
   * What came of each cell.
   *
   * @return in the order of the table; fewer than asked for where the user stopped it
   */
  public List<Cell> cells() {
    return cells;
  }

  /**
   * How many cells could be held.
   *
   * @return between zero and the number of cells
   */
  public long held() {
    return cells.stream().filter(Cell::held).count();
  }

  /**
   * The grid in the wide form: a row for each cell, with the moment and the arm at each joint, the
   * balance, and the reason where nothing could be held.
   *
   * @param joints which joints; hip, knee, ankle, low back, mid back and shoulder when none are
   *     named
   * @return a Tablesaw table, units in the column names; moments are signed, positive where the
   *     resistance flexes
   */
  public Table table(JointId... joints) {
    return Tables.of(sheet(joints));
  }

  /**
   * The wide form as a plain sheet, the same cells as {@link #table}.
   *
   * @param joints which joints, or none for the usual ones
   * @return the sheet
   */
  public Sheet sheet(JointId... joints) {
    return GridSheets.form(Forms.WIDE, spans(), cells, Forms.orUsual(joints)).about(this);
  }

  /**
   * The grid in the tidy form: a row for each cell and joint, with side, moment, arm, what the
   * resistance tends to do, what opposes it, and the reason where nothing could be held.
   *
   * @param joints which joints, or none for the usual ones
   * @return a Tablesaw table, units in the column names
   */
  public Table tidyTable(JointId... joints) {
    return Tables.of(tidySheet(joints));
  }

  /**
   * The tidy form as a plain sheet, the same cells as {@link #tidyTable}.
   *
   * @param joints which joints, or none for the usual ones
   * @return the sheet
   */
  public Sheet tidySheet(JointId... joints) {
    return GridSheets.form(Forms.TIDY, spans(), cells, Forms.orUsual(joints)).about(this);
  }

  /**
   * The moments at one joint in colours: of two quantities a map, the second across and the first
   * upwards; of three, small maps side by side in one scale, one for each value of the first.
   *
   * @param joint which
   * @return the plot
   * @throws Refused if nothing could be held
   */
  public Picture plot(JointId joint) {
    return Illustrator.pictureOf(this, List.of(Ask.present("joint", joint, "HIP")));
  }

  /**
   * Saves the wide table of the usual joints as CSV, with reasons and caution.
   *
   * @param file a name that ends in {@code .csv}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public Saved save(String file) {
    return sheet().save(file);
  }

  @Override
  public String toString() {
    return text();
  }
}
