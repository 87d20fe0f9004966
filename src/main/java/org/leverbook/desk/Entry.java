package org.leverbook.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leverbook.display.Preferences;
import org.leverbook.figure.FigureStyle;
import org.leverbook.session.Change;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Piece;

/** One input: what was typed, what took effect of it, and what came of it. */
final class Entry {

  /** A piece that took effect. */
  static final class Done {
    private final String text;
    private final String code;
    private final Optional<String> result;
    private final boolean aside;
    private Change change;
    private boolean takenBack;

    private Done(Piece piece, boolean aside) {
      this.text = piece.text();
      this.code = piece.code();
      this.result = piece.result();
      this.change = piece.change();
      this.aside = aside;
    }

    String text() {
      return text;
    }

    String code() {
      return code;
    }

    Optional<String> result() {
      return result;
    }

    Change change() {
      return change;
    }

    /** Whether it counts: it is not about the session itself, and was not taken back. */
    boolean stands() {
      return !aside && !takenBack;
    }

    void takeBack() {
      takenBack = true;
    }
  }

  private final int number;
  private final String text;
  private final List<Done> done = new ArrayList<>();
  private final List<Path> files = new ArrayList<>();
  private Optional<Evaluation.Status> status = Optional.empty();
  private boolean forgotten;
  private boolean forRoom;
  private final Preferences preferences = Preferences.current();
  private final FigureStyle style = FigureStyle.current();
  private boolean choseAnew;

  Entry(int number, String text) {
    this.number = number;
    this.text = text;
  }

  int number() {
    return number;
  }

  String text() {
    return text;
  }

  List<Done> done() {
    return done;
  }

  List<Path> files() {
    return files;
  }

  void add(Piece piece, boolean aside) {
    done.add(new Done(piece, aside));
  }

  void ended(Evaluation.Status how) {
    status = Optional.of(how);
    choseAnew = preferences != Preferences.current() || style != FigureStyle.current();
  }

  /**
   * Brings back the look of answers and pictures as it was before.
   *
   * @return whether it had chosen another
   */
  boolean takeBackChoices() {
    if (choseAnew) {
      Preferences.choose(preferences);
      FigureStyle.choose(style);
    }
    return choseAnew;
  }

  /** Lets go of the values that it replaced: it cannot be taken back any more. */
  void forget() {
    forgotten = true;
    done.forEach(piece -> piece.change = Change.NONE);
  }

  /** The same since memory is full; what changed nothing of the user's can still be taken back. */
  void forgetForRoom() {
    if (!forgotten && done.stream().anyMatch(piece -> !piece.change.isNone())) {
      forRoom = true;
      forget();
    }
  }

  boolean forgotten() {
    return forgotten;
  }

  /** Whether it was forgotten to make room, not because it is long ago. */
  boolean forRoom() {
    return forRoom;
  }

  boolean stands() {
    return done.stream().anyMatch(Done::stands);
  }

  Optional<String> lastResult() {
    return done.isEmpty() ? Optional.empty() : done.get(done.size() - 1).result();
  }

  /** Whether it is only about the session itself. */
  boolean aside() {
    return !done.isEmpty() && done.stream().allMatch(piece -> piece.aside);
  }

  /** What to run to have it again: where it asked for other code, that code. */
  String again() {
    boolean whole = status.filter(Evaluation.Status.OK::equals).isPresent() && !aside();
    return whole
        ? done.stream().filter(p -> !p.aside).map(Done::text).collect(Collectors.joining())
        : text;
  }

  /** What came of it, in one or two words. */
  String outcome() {
    if (status.isEmpty()) {
      return "running";
    }
    if (done.stream().anyMatch(p -> p.takenBack) && !stands()) {
      return "taken back";
    }
    String some = stands() ? ", the beginning worked" : "";
    return switch (status.get()) {
      case OK -> "worked";
      case FAILED -> "failed" + some;
      case STOPPED -> "stopped" + some;
      case INCOMPLETE -> "not finished" + some;
    };
  }
}
