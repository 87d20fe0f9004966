package org.leverbook.figure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
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
    if (positions.stream().anyMatch(part -> part.scene().sight().fromFront())) {
      sentences.add(
          "Seen from the front, arm and moment are about the line of sight; tables tell them about"
              + " the joint's own axis.");
    }
    if (positions.stream().anyMatch(part -> !part.scene().holdsSomething())) {
      sentences.add(
          "Where nothing is held the line is that of the body's own weight, without arms.");
    }
    Set<String> notes = new LinkedHashSet<>(grid.notes());
    Set<String> sources = new LinkedHashSet<>();
    positions.forEach(part -> sources.addAll(Caption.sources(part.scene().position())));
    for (String note : notes) {
      String bare = note.strip();
      if (bare.startsWith(SOURCES)) {
        Stream.of(bare.substring(SOURCES.length()).replaceAll("\\.$", "").split("; "))
            .forEach(sources::add);
      } else if (!bare.endsWith(Caution.TEXT)) {
        sentences.add(bare);
      }
    }
    String cited = sources.isEmpty() ? "" : SOURCES + String.join("; ", sources) + ". ";
    sentences.add(cited + Caution.TEXT);
    return sentences;
  }
}
