package org.leverbook.strength;

import java.util.List;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;

/**
 * How hard a hand holds: the median of its age and sex (Dodds et al. 2014; peaks found, the table
 * from memory). A bar is taken to slip when it pulls out of one hand with more than that
 * (assumption: chalk, a hook or mixed grip, straps hold more). Not scaled by build.
 */
final class Grip {

  private static final DataTable TABLE = DataTable.read("strength/grip_percentiles.csv");

  private final double newtons;
  private final Evidence evidence;

  Grip(Who who) {
    List<DataRow> rows = TABLE.rows().stream().filter(r -> r.is("sex", who.letter())).toList();
    newtons =
        Shape.of(rows, "age_years", "p50_N").at(who.condition().years())
            * who.trained("grip", "hold", 0);
    evidence =
        new Evidence(
            "Dodds et al. 2014" + who.trainedBy("grip", "hold"),
            "from memory",
            "newtons; the median, taken as the pull that opens the hand");
  }

  double newtons() {
    return newtons;
  }

  Evidence evidence() {
    return evidence;
  }
}
