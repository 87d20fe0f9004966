package org.leverbook.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.leverbook.display.Caution;

/** What stands once at the foot of a page of pictures: how to read it, sources, the caution. */
final class PageFoot {

  static final String SOURCES = "Sources: ";

  private PageFoot() {}

  static List<String> sentences(GridPart grid) {
    List<PositionPart> positions = grid.positions().toList();
    List<String> sentences = new ArrayList<>();
    if (positions.stream().anyMatch(part -> !part.scene().arms().isEmpty())) {
      sentences.add(
          "Arms run from the joint square onto the dashed line of force. Below each body: the"
              + " moment at the joint, of a paired joint on the side that has more, and the arm;"
              + " hollow, with a minus, where the resistance extends. All bars are drawn to one"
              + " measure.");
    }
    if (positions.stream().anyMatch(part -> part.scene().sight().frontal())) {
      sentences.add(
          "Seen from the front, arm and moment are about the line of sight; tables tell them about"
              + " the joint's own axis.");
    }
    if (positions.stream().anyMatch(part -> !part.scene().holdsSomething())) {
      sentences.add(
          "Where nothing is held the line is that of the body's own weight, without arms.");
    }
    sentences.addAll(hidden(positions));
    Set<String> sources = new LinkedHashSet<>();
    positions.forEach(
        part -> part.scene().position().body().sources().forEach(s -> cite(s, sources)));
    for (String note : new LinkedHashSet<>(grid.notes())) {
      String bare = note.strip();
      if (bare.startsWith(SOURCES)) {
        cite(bare.substring(SOURCES.length()).replaceAll("\\.$", ""), sources);
      } else if (!bare.endsWith(Caution.TEXT)) {
        sentences.add(bare);
      }
    }
    String cited = sources.isEmpty() ? "" : SOURCES + String.join("; ", sources) + ". ";
    sentences.add(cited + Caution.TEXT);
    return sentences;
  }

  private static void cite(String text, Set<String> sources) {
    sources.addAll(List.of(text.split("; ")));
  }

  /** What a view hides of the arms, in one sentence for all positions seen alike. */
  private static List<String> hidden(List<PositionPart> positions) {
    Map<String, Set<String>> told = new LinkedHashMap<>();
    for (PositionPart part : positions) {
      Optional<String> sentence = Caption.hidden(part.scene());
      int colon = sentence.map(s -> s.indexOf(": ")).orElse(-1);
      if (colon > 0) {
        String arms =
            sentence.get().substring(colon + 2).replaceAll("\\.$", "").replace("; ", ", ");
        String whose = positions.size() == 1 ? "" : part.shortly() + ", ";
        told.computeIfAbsent(sentence.get().substring(0, colon), s -> new LinkedHashSet<>())
            .add(whose + arms);
      } else {
        sentence.ifPresent(s -> told.put(s, Set.of()));
      }
    }
    List<String> sentences = new ArrayList<>();
    told.forEach(
        (sentence, arms) ->
            sentences.add(
                arms.isEmpty() ? sentence : sentence + ": " + String.join("; ", arms) + "."));
    return sentences;
  }
}
