package org.leverbook.article;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leverbook.data.Nearest;
import org.leverbook.quantity.Refused;

/** Which figure and which table has which number, and what they are called. */
final class Numbering {

  /**
   * A number and where it stands.
   *
   * @param word as in "Figure 2"
   * @param anchor as in "figure-2"
   */
  record Place(String word, String anchor) {}

  private final Map<Part, Place> places = new java.util.IdentityHashMap<>();
  private final Map<String, Place> named = new LinkedHashMap<>();
  private final int figures;
  private final int tables;

  Numbering(List<Part> parts, Labels labels) {
    int figure = 0;
    int table = 0;
    for (Part part : parts) {
      if (part instanceof Part.Pictured pictured) {
        figure++;
        put(part, pictured.name(), labels.say("Figure") + " " + figure, "figure-" + figure);
      } else if (part instanceof Part.Tabled tabled) {
        table++;
        put(part, tabled.name(), labels.say("Table") + " " + table, "table-" + table);
      }
    }
    this.figures = figure;
    this.tables = table;
  }

  private void put(Part part, String name, String word, String anchor) {
    Place place = new Place(word, anchor);
    places.put(part, place);
    if (!name.isEmpty()) {
      named.put(name, place);
    }
  }

  int figures() {
    return figures;
  }

  int tables() {
    return tables;
  }

  Place of(Part part) {
    return places.get(part);
  }

  Optional<Place> called(String name) {
    return Optional.ofNullable(named.get(name));
  }

  /** A sentence about the first name in a text that nothing is called by; empty where all are. */
  Optional<String> missing(List<Prose> texts) {
    return texts.stream()
        .flatMap(text -> text.names().stream())
        .filter(name -> !named.containsKey(name))
        .findFirst()
        .map(this::sentence);
  }

  void checked(List<Prose> texts) {
    missing(texts)
        .ifPresent(
            sentence -> {
              throw new Refused(sentence);
            });
  }

  private String sentence(String name) {
    List<String> near = Nearest.of(name, named.keySet());
    String known =
        !near.isEmpty()
            ? "did you mean " + quoted(near) + "?"
            : named.isEmpty()
                ? "none has a name yet. Give one, as in figure(\""
                    + name
                    + "\", picture, \"caption\")."
                : "there are " + quoted(List.copyOf(named.keySet())) + ".";
    return "The text speaks of {"
        + name
        + "}, but no figure or table of this article is called so; "
        + known;
  }

  private static String quoted(List<String> names) {
    return names.stream().map(n -> "\"" + n + "\"").collect(Collectors.joining(", "));
  }
}
