package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leverbook.display.Caution;
import org.leverbook.load.Barbell;
import org.leverbook.load.Inertia;
import org.leverbook.load.Load;
import org.leverbook.statics.Fact;
import org.leverbook.statics.Position;

/** What stands above and below the picture of a position. */
final class Caption {

  private Caption() {}

  static String title(SideView view) {
    Position position = view.position();
    String held =
        view.holdsSomething()
            ? position.loads().stream()
                .filter(l -> !(l instanceof Barbell bar) || bar.kilograms() > 0)
                .map(Load::description)
                .collect(Collectors.joining(", "))
            : "nothing held";
    return capital(position.name()) + (held.isEmpty() ? "" : ": " + held);
  }

  static String person(SideView view) {
    return capital(view.position().body().person().text());
  }

  /** A sentence or two of what is drawn, for readers who listen. */
  static String description(SideView view) {
    return "Side view, drawn to scale, of "
        + view.position().body().person().text()
        + ". "
        + view.arms().stream()
            .map(a -> "Arm to the " + a.name() + ": " + a.size() + ".")
            .collect(Collectors.joining(" "))
        + " "
        + balance(view.position());
  }

  static List<String> sentences(SideView view) {
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

  private static String meaning(SideView view) {
    if (view.arms().isEmpty()) {
      return view.holdsSomething()
          ? "The dashed line is the load's line of force."
          : "Nothing is held, so no arms are drawn: the line is that of the body's own weight, through its centre of"
              + " mass, and each joint carries only its share of it.";
    }
    String line = view.line().source();
    return "Arms run from the joint square onto the line of force of the "
        + line
        + ", to scale; each moment is that of "
        + together(view.position())
        + " together, in N·m.";
  }

  /** Everything that a moment is made of, as in "the bar and of the body's own weight". */
  private static String together(Position position) {
    List<String> parts =
        new ArrayList<>(
            position.loads().stream()
                .filter(l -> !(l instanceof Inertia))
                .map(l -> "the " + l.source())
                .distinct()
                .toList());
    String last = "the body's own weight";
    if (padded(position)) {
      parts.add(last);
      last = "the supports";
    }
    if (position.loads().stream().anyMatch(Inertia.class::isInstance)) {
      parts.add(last);
      last = "what the masses set against being moved";
    }
    return parts.size() == 1 && last.startsWith("the body")
        ? parts.get(0) + " and of " + last
        : String.join(", ", parts) + " and " + last;
  }

  private static boolean padded(Position position) {
    return position.supportForces().stream().anyMatch(r -> !r.source().equals("floor"));
  }

  private static Optional<String> missing(SideView view) {
    if (view.without().isEmpty() || !view.holdsSomething()) {
      return Optional.empty();
    }
    String joints =
        view.without().stream().map(JointNames::of).distinct().collect(Collectors.joining(", "));
    return Optional.of(
        "No arm to: " + joints + "; the " + view.line().source() + " does not act beyond.");
  }

  private static Optional<String> hidden(SideView view) {
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
            "The side view hides what runs sideways; in space the line of force is this far away: "
                + String.join("; ", parts)
                + ".");
  }

  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
