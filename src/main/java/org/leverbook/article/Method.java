package org.leverbook.article;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTable;
import org.leverbook.load.Inertia;
import org.leverbook.load.Load;
import org.leverbook.statics.Fact;
import org.leverbook.statics.Position;
import org.leverbook.support.Support;

/**
 * The method of an article, written from what was really used: whose body, which postures, loads
 * and supports, what was varied and tested, how the sums go, and whose numbers stand behind them.
 *
 * @param paragraphs plain sentences, a topic each
 * @param data one line for each data file that was used
 * @param limits what of it is from memory or assumed
 */
record Method(List<Paragraph> paragraphs, List<String> data, List<String> limits) {

  /** So many are told one by one. */
  private static final int ONE_BY_ONE = 8;

  private static final String STATICS =
      "Moments are net moments in three dimensions: gravity, loads and supports on everything beyond"
          + " a joint, before muscles. Axes of world and joints follow the recommendations of the"
          + " International Society of Biomechanics (Wu et al. 2002, 2005): x forward, y up, z to the"
          + " right. A moment arm is the perpendicular distance from a joint's centre to the line of"
          + " force.";

  private static final String STILL =
      " Everything is held still. Supports push only, within friction (a pyramid of four edges); what"
          + " balance leaves open is settled by the least sum of squared efforts, moment over"
          + " capacity.";

  private static final String MOVING =
      " The body moves: its inertia and that of the loads are counted at each instant. Supports push"
          + " only, within friction (a pyramid of four edges); what balance leaves open is settled by"
          + " the least sum of squared efforts, moment over capacity.";

  private static final String MUSCLES =
      "Stretched tissue first takes what it can; the muscles share the rest so that the sum of their"
          + " squared stresses, each as a share of its greatest, is least. Muscles only pull; what"
          + " nobody can hold is told as uncovered. It is the least stress that holds: people who"
          + " brace pull harder.";

  private static final String STRENGTH =
      "Strengths are published means of single joints, scaled by body mass times stature, age and"
          + " training; between people they vary by 20 to 30 % (from memory).";

  private static final String DISCS =
      "Forces in the discs are those of the load and of the muscles together.";

  private static final String BONES =
      "Forces between the bones are those of the load and of the muscles together.";

  /**
   * A paragraph.
   *
   * @param topic in one word or two
   * @param text sentences
   */
  record Paragraph(String topic, String text) {}

  /**
   * Writes the method.
   *
   * @param used what the article was made of
   */
  static Method of(Used used) {
    List<Paragraph> told = new ArrayList<>();
    people(used.people(), told);
    positions(used, told);
    equipment(used, told);
    List<String> studies = used.studies().stream().map(Studies::sentence).distinct().toList();
    if (!studies.isEmpty()) {
      told.add(new Paragraph("Questions", String.join(" ", studies)));
    }
    if (used.topics().contains(Used.Topic.STATICS)) {
      told.add(new Paragraph("Sums", STATICS + (used.moving() ? MOVING : STILL)));
    }
    asked(used, Used.Topic.MUSCLES, "Muscles", MUSCLES, told);
    asked(used, Used.Topic.DISCS, "Discs", DISCS, told);
    asked(used, Used.Topic.BONES, "Joints", BONES, told);
    asked(used, Used.Topic.STRENGTH, "Strength", STRENGTH, told);
    List<String> assumed = assumed(used.positions());
    if (!assumed.isEmpty()) {
      told.add(new Paragraph("Assumed", String.join(" ", assumed)));
    }
    List<DataSource> data = data(used);
    return new Method(told, data.stream().map(Method::line).toList(), limits(data));
  }

  private static void asked(
      Used used, Used.Topic topic, String word, String text, List<Paragraph> told) {
    if (used.topics().contains(topic)) {
      told.add(new Paragraph(word, text));
    }
  }

  private static void people(Collection<Person> people, List<Paragraph> told) {
    if (people.isEmpty()) {
      return;
    }
    if (people.size() == 1) {
      told.add(new Paragraph("Lifter", capital(build(people.iterator().next())) + "."));
      return;
    }
    List<String> each = new ArrayList<>();
    people.stream().limit(ONE_BY_ONE).forEach(p -> each.add((each.size() + 1) + ": " + build(p)));
    told.add(new Paragraph("Lifters", String.join("; ", each) + rest(people.size()) + "."));
  }

  /** Who it is; whose table of masses stands among the sources. */
  private static String build(Person person) {
    return person.text().replace("; masses: " + person.table().source(), "")
        + ", taken as "
        + person.condition().years()
        + " years old and "
        + person.condition().training().word();
  }

  private static void positions(Used used, List<Paragraph> told) {
    Collection<Position> positions = used.positions();
    if (positions.isEmpty()) {
      return;
    }
    List<String> people = used.people().stream().map(Person::text).toList();
    String each =
        positions.stream()
            .limit(ONE_BY_ONE)
            .map(position -> posture(position, people))
            .collect(Collectors.joining(" "));
    told.add(
        new Paragraph(
            "Posture",
            each
                + (rest(positions.size()).isEmpty()
                    ? ""
                    : " Others: " + (positions.size() - ONE_BY_ONE) + " more.")));
  }

  private static String posture(Position position, List<String> people) {
    List<Load> held = position.loads().stream().filter(l -> !(l instanceof Inertia)).toList();
    String with =
        held.isEmpty()
            ? "nothing held"
            : held.stream().map(Load::description).collect(Collectors.joining(", "));
    String facts = position.facts().stream().map(Fact::toString).collect(Collectors.joining(", "));
    int lifter = people.indexOf(position.body().person().text()) + 1;
    String whose = people.size() == 1 ? "" : ", lifter " + lifter;
    return capital(position.name())
        + whose
        + ": "
        + with
        + (facts.isEmpty() ? "" : "; " + facts)
        + ".";
  }

  private static void equipment(Used used, List<Paragraph> told) {
    Set<String> laws = new LinkedHashSet<>();
    for (Load load : used.loads()) {
      if (!(load instanceof Inertia)) {
        laws.add(capital(load.source()) + ": " + lower(load.law()));
      }
    }
    if (!laws.isEmpty()) {
      told.add(new Paragraph("Loads", String.join(" ", laws)));
    }
    if (!used.supports().isEmpty()) {
      String each =
          used.supports().stream()
              .limit(ONE_BY_ONE)
              .map(Support::description)
              .collect(Collectors.joining("; "));
      told.add(new Paragraph("Supports", capital(each) + rest(used.supports().size()) + "."));
    }
  }

  private static String rest(int all) {
    return all <= ONE_BY_ONE ? "" : "; and " + (all - ONE_BY_ONE) + " more";
  }

  /** What the positions say of themselves: each sentence once. */
  private static List<String> assumed(Collection<Position> positions) {
    return positions.stream()
        .limit(ONE_BY_ONE)
        .flatMap(position -> position.notes().stream())
        .filter(note -> !note.startsWith("Moving: "))
        .distinct()
        .toList();
  }

  private static List<DataSource> data(Used used) {
    Set<String> topics = new LinkedHashSet<>();
    if (!used.masses().isEmpty()) {
      topics.add("body");
    }
    for (SegmentTable table : used.masses()) {
      topics.add(table == SegmentTable.WINTER_2009 ? "Winter" : "de Leva");
    }
    used.topics().forEach(topic -> topics.add(topic.word()));
    return DataSource.all().stream().filter(source -> topics.contains(source.topic())).toList();
  }

  private static String line(DataSource source) {
    String doubt = source.doubt();
    return String.format(
        Locale.ROOT,
        "%s: %s (%s%s)",
        capital(source.use()),
        source.whose(),
        source.file(),
        doubt.isEmpty() ? "" : "; " + doubt);
  }

  private static List<String> limits(List<DataSource> data) {
    long doubtful = data.stream().filter(source -> !source.doubt().isEmpty()).count();
    if (doubtful == 0) {
      return List.of();
    }
    return List.of(
        String.format(
            Locale.ROOT,
            "Of these %d data files %d hold some numbers that were recalled or assumed and not read"
                + " in their source; each row says which. Results are as sure as the least sure of"
                + " them.",
            data.size(),
            doubtful));
  }

  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static String lower(String text) {
    return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }
}
