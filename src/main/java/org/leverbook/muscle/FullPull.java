package org.leverbook.muscle;

import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.leverbook.body.Joint;
import org.leverbook.body.JointId;

/** Says where muscles are asked for all they have, and what that means for numbers made of it. */
final class FullPull {

  /** What a table shows as 100 %. */
  private static final double FULL = 0.995;

  private static final int MOST_NAMED = 4;

  private FullPull() {}

  /** Of all muscles, for a table that tells beside it what stays uncovered. */
  static List<String> note(Effort effort) {
    return note(effort, i -> true, held -> true);
  }

  /** Of the muscles over one joint. */
  static List<String> note(Effort effort, Joint joint) {
    Predicate<Held> here = held -> held.joint().fullName().equals(joint.fullName());
    return note(effort, i -> crosses(effort, i, here), here);
  }

  private static List<String> note(Effort effort, IntPredicate which, Predicate<Held> here) {
    String full = full(effort, which);
    if (full.isEmpty()) {
      return List.of();
    }
    boolean enough =
        effort.uncovered().stream().filter(here).allMatch(held -> !held.notKnown().isEmpty());
    return List.of(full + (enough ? just() : " They give all they have, and it is not enough."));
  }

  /** Of the muscles over some joints, for a table of what presses in these. */
  static List<String> pressing(Effort effort, List<JointId> joints) {
    List<String> names = joints.stream().map(JointId::word).toList();
    Predicate<Held> here = held -> names.contains(held.joint().name());
    String full = full(effort, i -> crosses(effort, i, here));
    List<Held> lacking =
        effort.uncovered().stream()
            .filter(here.and(held -> held.notKnown().isEmpty()))
            .sorted(Comparator.comparingDouble(held -> -Math.abs(held.uncovered())))
            .toList();
    if (lacking.isEmpty()) {
      return full.isEmpty() ? List.of() : List.of(full + just());
    }
    String less =
        "Muscles do not hold all of it ("
            + lacking.get(0).sentence()
            + "): the forces are what they can give; holding it would press harder.";
    return List.of(full.isEmpty() ? less : full + " " + less);
  }

  private static String just() {
    return " They give all they have, and it is just enough: for a little more others must help, or"
        + " it is not held.";
  }

  private static boolean crosses(Effort effort, int strand, Predicate<Held> joints) {
    return IntStream.range(0, effort.held().size())
        .anyMatch(row -> effort.arm(row, strand) != 0 && joints.test(effort.held().get(row)));
  }

  /** The trade groups of the muscles at full pull, those that give the most force first. */
  private static String full(Effort effort, IntPredicate which) {
    List<Strand> strands = effort.muscles().strands();
    List<String> groups =
        IntStream.range(0, strands.size())
            .filter(i -> effort.stress(i) >= FULL)
            .filter(which)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer i) -> -effort.force(i)))
            .map(i -> strands.get(i).muscle().group())
            .distinct()
            .toList();
    if (groups.isEmpty()) {
      return "";
    }
    int more = groups.size() - MOST_NAMED;
    String named = String.join(", ", groups.subList(0, Math.min(MOST_NAMED, groups.size())));
    return "At full pull, wholly or in part: "
        + named
        + (more > 0 ? " and " + more + " more." : ".");
  }
}
