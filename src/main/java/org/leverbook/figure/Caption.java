package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.leverbook.display.Caution;
import org.leverbook.load.Barbell;
import org.leverbook.load.Inertia;
import org.leverbook.load.Load;
import org.leverbook.statics.Fact;
import org.leverbook.statics.Position;
import org.leverbook.statics.Reaction;

/** What stands above and below the picture of a position. */
final class Caption {

  private Caption() {}

  static String title(Scene view) {
    String held = held(view);
    return name(view) + (held.isEmpty() ? "" : ": " + held);
  }

  static String name(Scene view) {
    return capital(view.position().name());
  }

  /** What is lifted; what masses set against being moved is no thing of its own. */
  static String held(Scene view) {
    return view.holdsSomething()
        ? view.position().loads().stream()
            .filter(l -> !(l instanceof Inertia))
            .filter(l -> !(l instanceof Barbell bar) || bar.kilograms() > 0)
            .map(Load::description)
            .collect(Collectors.joining(", "))
        : "nothing held";
  }

  static String person(Scene view) {
    return capital(view.position().body().person().text());
  }

  /** A sentence or two of what is drawn, for readers who listen. */
  static String description(Scene view) {
    return capital(viewed(view))
        + ", drawn to scale, of "
        + view.position().body().person().text()
        + ". "
        + view.arms().stream()
            .map(a -> "Arm to the " + a.name() + ": " + a.size() + ".")
            .collect(Collectors.joining(" "))
        + " "
        + balance(view.position());
  }

  private static String viewed(Scene view) {
    return view.sight().view().called();
  }

  static List<String> sentences(Scene view) {
    Position position = view.position();
    List<String> all = new ArrayList<>();
    if (!position.facts().isEmpty()) {
      all.add(
          capital(
              position.facts().stream().map(Fact::toString).collect(Collectors.joining(", "))
                  + "."));
    }
    all.add(balance(position));
    all.add(meaning(view));
    hidden(view).ifPresent(all::add);
    atReader(view).ifPresent(all::add);
    missing(view).ifPresent(all::add);
    all.addAll(position.notes());
    all.add("Sources: " + String.join("; ", sources(position)) + ".");
    all.add(Caution.TEXT);
    return all;
  }

  private static String balance(Position position) {
    if (!position.held()) {
      return position.holding().sentence();
    }
    return position
        .onGround()
        .map(b -> capital(b.text()) + ".")
        .orElse("Nothing stands on level ground.");
  }

  /** Those that the head of the page does not name already. */
  private static List<String> sources(Position position) {
    String head = position.body().person().text();
    return position.body().sources().stream().filter(s -> !head.contains(s)).toList();
  }

  private static String meaning(Scene view) {
    if (view.arms().isEmpty()) {
      return view.holdsSomething()
          ? line(view) + " is the load's line of force."
          : "Nothing is held, so no arms are drawn: the line is that of the body's own weight, through its centre of"
              + " mass, and each joint carries only its share of it.";
    }
    return "Arms run from the joint square onto the line of force of the "
        + view.line().source()
        + (view.line().endOn() ? ", seen end-on as a ring" : "")
        + (view.sight().frontal()
            ? ", to scale; each moment is about the line of sight, and is that of "
            : view.sight().fromSide()
                ? ", to scale; each moment is that of "
                : ", to scale; each moment is the whole of it in space, and is that of ")
        + together(view.position())
        + ".";
  }

  /** Everything that a moment is made of, by the names that labels and tables use. */
  private static String together(Position position) {
    List<String> sources =
        Stream.concat(
                position.loads().stream()
                    .filter(l -> !(l instanceof Inertia))
                    .filter(l -> !l.forces(position.placement()).isEmpty())
                    .map(Load::source),
                position.supportForces().stream()
                    .map(Reaction::source)
                    .filter(source -> !source.equals("floor")))
            .distinct()
            .toList();
    boolean moves = position.loads().stream().anyMatch(Inertia.class::isInstance);
    if (sources.size() == 1 && !moves) {
      return "the " + sources.get(0) + " and of the body's own weight together, in N·m";
    }
    return "everything together, in N·m: "
        + String.join(", ", sources)
        + (moves
            ? ", body weight and inertia, which is what masses set against being sped up"
            : " and body weight");
  }

  private static Optional<String> missing(Scene view) {
    if (view.without().isEmpty() || !view.holdsSomething()) {
      return Optional.empty();
    }
    boolean front = view.sight().frontal();
    String joints =
        view.without().stream()
            .map(j -> front && j.paired() ? j.word() : JointNames.of(j))
            .distinct()
            .collect(Collectors.joining(", "));
    if (front) {
      return Optional.of(
          "No arm to: "
              + joints
              + "; what it carries from the "
              + view.line().source()
              + " is not this line alone, but that of both sides, or a share of one leg.");
    }
    return Optional.of(
        "No arm to: " + joints + "; the " + view.line().source() + " does not act beyond.");
  }

  static Optional<String> hidden(Scene view) {
    List<String> parts = new ArrayList<>();
    for (DrawnArm arm : view.arms()) {
      if (arm.hidden() > 0) {
        parts.add(
            String.format(
                Locale.ROOT,
                "%s %.1f cm (%.1f cm more than drawn)",
                arm.id().word(),
                100 * arm.moment().arm3d(),
                100 * arm.hidden()));
      }
    }
    for (DrawnArm arm : view.arms()) {
      if (arm.axisOblique()) {
        parts.add(
            String.format(
                Locale.ROOT,
                "about the %s's own axis %.1f cm, drawn %.1f cm",
                arm.id().word(),
                100 * arm.moment().arm(),
                100 * arm.length()));
      }
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The "
                + viewed(view)
                + " hides what runs "
                + across(view.sight())
                + "; in space the line of force is this far away: "
                + String.join("; ", parts)
                + ".");
  }

  private static String across(Sight sight) {
    if (sight.frontal()) {
      return "forward and back";
    }
    if (sight.fromSide()) {
      return "sideways";
    }
    return sight.flat() ? "up and down" : "towards the reader";
  }

  private static String line(Scene view) {
    return view.line().endOn() ? "The ring, seen end-on," : "The dashed line";
  }

  /** What arcs mean; for pages that draw them. */
  static Optional<String> arcs(Scene view) {
    return view.arms().stream().anyMatch(DrawnArm::turns)
        ? Optional.of(
            "Arcs show which way the resistance tends to turn the part on the side of the "
                + view.line().source()
                + ".")
        : Optional.empty();
  }

  private static Optional<String> atReader(Scene view) {
    List<String> arms =
        view.arms().stream()
            .filter(DrawnArm::pointsAtReader)
            .map(
                arm ->
                    String.format(
                        Locale.ROOT,
                        "the arm to the %s points at the reader: %.1f cm in space, seen as little"
                            + " more than a dot",
                        arm.id().word(),
                        100 * arm.moment().arm3d()))
            .toList();
    return arms.isEmpty()
        ? Optional.empty()
        : Optional.of(capital(String.join("; ", arms)) + ". Another view shows it.");
  }

  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
