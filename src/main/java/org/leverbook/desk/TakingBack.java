package org.leverbook.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.leverbook.session.Session;
import org.leverbook.session.TakenBack;

/** Takes inputs back, and says what that did and what it could not do. */
final class TakingBack {

  private static final int WIDTH = 60;

  private final Session session;
  private final Logbook logbook;

  TakingBack(Session session, Logbook logbook) {
    this.session = session;
    this.logbook = logbook;
  }

  /** Takes back the last input that stands; of the running one its last statement only. */
  Said last(Entry running) {
    Optional<Entry> found = logbook.lastThatStands();
    if (found.isEmpty()) {
      return new Said("There is nothing left to take back.");
    }
    Entry entry = found.get();
    if (entry.forgotten()) {
      return new Said(
          "Input "
              + entry.number()
              + (entry.forRoom()
                  ? " cannot be taken back: when memory was full, what was before it was let go."
                  : " is too long ago: what was before it is not kept.")
              + " Give the lines again that you"
              + " want.");
    }
    List<Entry.Done> pieces =
        new ArrayList<>(entry.done().stream().filter(Entry.Done::stands).toList());
    Collections.reverse(pieces);
    boolean oneStatement = entry == running;
    return back(entry, oneStatement ? pieces.subList(0, 1) : pieces, oneStatement);
  }

  private Said back(Entry entry, List<Entry.Done> pieces, boolean oneStatement) {
    Set<String> gone = new LinkedHashSet<>();
    Set<String> back = new LinkedHashSet<>();
    Set<String> lost = new LinkedHashSet<>();
    for (Entry.Done piece : pieces) {
      TakenBack taken = session.takeBack(piece.change());
      piece.takeBack();
      back.removeAll(taken.gone());
      gone.addAll(taken.gone());
      back.addAll(taken.back());
      lost.addAll(taken.lost());
    }
    List<String> sentences = new ArrayList<>();
    String what = oneStatement ? pieces.get(0).code() : entry.text();
    String number = oneStatement ? "" : "input " + entry.number() + ", ";
    sentences.add("Taken back: " + number + OneLine.of(what, WIDTH));
    if (!gone.isEmpty()) {
      sentences.add(list(gone) + (gone.size() == 1 ? " is gone." : " are gone."));
    }
    if (!back.isEmpty()) {
      sentences.add(list(back) + (back.size() == 1 ? " is as it was before." : " are as before."));
    }
    if (!lost.isEmpty()) {
      sentences.add(list(lost) + " could not be brought back: give the line again.");
    }
    if (!oneStatement && entry.takeBackChoices()) {
      sentences.add("Answers and pictures look as before.");
    }
    if (sentences.size() == 1) {
      sentences.add("It had changed no variable of yours; save(…) leaves it out now.");
    }
    if (!entry.files().isEmpty()) {
      sentences.add(
          "Files that it wrote stay: "
              + entry.files().stream()
                  .map(file -> String.valueOf(file.getFileName()))
                  .distinct()
                  .collect(Collectors.joining(", "))
              + ".");
    }
    return new Said(String.join("\n", sentences));
  }

  private static String list(Set<String> names) {
    List<String> all = List.copyOf(names);
    int last = all.size() - 1;
    return last == 0
        ? all.get(0)
        : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
  }
}
