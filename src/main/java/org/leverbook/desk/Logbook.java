package org.leverbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.quantity.Refused;
import org.leverbook.session.Piece;

/** All inputs of a session, in order. */
final class Logbook {

  /** Older inputs keep their text; the values that they replaced are let go. */
  private static final int TAKEN_BACK_AT_MOST = 100;

  private static final int WIDTH = 70;

  private static final Pattern CALL = Pattern.compile("\\s*(\\w+)\\s*\\(");

  /** Words that are about the session and compute nothing. */
  private static final Set<String> ASIDE =
      Set.of(
          "help",
          "words",
          "glossary",
          "examples",
          "example",
          "mine",
          "inputs",
          "undo",
          "again",
          "load",
          "lesson",
          "trace",
          "original",
          "quit");

  private final List<Entry> entries = new ArrayList<>();

  Entry begin(String text) {
    Entry entry = new Entry(entries.size() + 1, text);
    entries.add(entry);
    int old = entries.size() - 1 - TAKEN_BACK_AT_MOST;
    if (old >= 0) {
      entries.get(old).forget();
    }
    return entry;
  }

  /** Memory is short: the values that inputs replaced are let go, of all of them. */
  void forgetValues() {
    entries.forEach(Entry::forgetForRoom);
  }

  void clear() {
    entries.clear();
  }

  List<Entry> entries() {
    return entries;
  }

  /** Whether a saved script does without this piece. */
  static boolean isAside(Piece piece, boolean saidSo) {
    Matcher call = CALL.matcher(piece.code());
    return piece.change().isNone()
        && call.lookingAt()
        && (ASIDE.contains(call.group(1)) || saidSo && call.group(1).equals("save"));
  }

  /** The input that the last undo would take back; the running one where some of it worked. */
  Optional<Entry> lastThatStands() {
    for (int i = entries.size() - 1; i >= 0; i--) {
      if (entries.get(i).stands()) {
        return Optional.of(entries.get(i));
      }
    }
    return Optional.empty();
  }

  /** An input to run again: by number, or the last one before this where the number is 0. */
  Entry wanted(int number, Entry running) {
    if (number >= running.number() || number < 0) {
      throw new Refused(
          running.number() == 1
              ? "There is no input before this one."
              : "There is no input "
                  + number
                  + " before this one: there are 1 to "
                  + (running.number() - 1)
                  + ". inputs() lists them.");
    }
    if (number > 0) {
      return entries.get(number - 1);
    }
    for (int i = running.number() - 2; i >= 0; i--) {
      if (!entries.get(i).aside()) {
        return entries.get(i);
      }
    }
    throw new Refused("There is no input before this one that could be run again.");
  }

  Sheet sheet() {
    List<List<Object>> rows = new ArrayList<>();
    for (Entry entry : entries) {
      rows.add(List.of(entry.number(), OneLine.of(entry.text(), WIDTH), entry.outcome()));
    }
    return new Sheet(
        "Inputs",
        List.of(new Column("number", "", 0), Column.text("input"), Column.text("what came of it")),
        rows,
        List.of("again(1) runs one again, undo() takes the last one back."));
  }
}
