package org.leverbook.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.leverbook.display.Shown;
import org.leverbook.language.Lesson;

/** The guided first lesson of one session: at which step it stands, and what it says. */
final class Guide {

  private static final int TRIES_BEFORE_A_HINT = 2;
  private static final int NOT_UNDER_WAY = -1;

  /**
   * What a step says.
   *
   * @param title what it is about
   * @param told what to know and to do
   * @param line a line that does it
   */
  private record Words(String title, String told, String line) {}

  private volatile int at = NOT_UNDER_WAY;
  private int tries;

  /** The lesson where it stands; it begins where none is under way. */
  synchronized Lesson page() {
    if (at == NOT_UNDER_WAY) {
      go(0);
    }
    return new Page(this, text());
  }

  private void go(int step) {
    at = step < Step.values().length ? step : NOT_UNDER_WAY;
    tries = 0;
  }

  /** Looks at what came of an input; says what the user should know of it. */
  Optional<String> look(Sight sight) {
    return at == NOT_UNDER_WAY ? Optional.empty() : looked(sight);
  }

  private synchronized Optional<String> looked(Sight sight) {
    int before = at;
    // A text of several statements may do several steps.
    while (at != NOT_UNDER_WAY && Step.values()[at].isDoneBy(sight)) {
      go(at + 1);
    }
    if (at != before) {
      return Optional.of(
          "Done: " + numbered(at == NOT_UNDER_WAY ? last() : at - 1) + ".\n" + text());
    }
    if (sight.aside()) {
      return Optional.empty();
    }
    tries++;
    if (tries > TRIES_BEFORE_A_HINT) {
      // Who has seen the line and goes on otherwise looks around, and wants no more reminders.
      return Optional.empty();
    }
    String open = capital(numbered(at)) + " is still open";
    return Optional.of(
        tries < TRIES_BEFORE_A_HINT
            ? open + "; lesson() tells it again, lesson().hint() gives a line."
            : open + ". This line would do:\n  " + words().get(at).line());
  }

  private static int last() {
    return Step.values().length - 1;
  }

  private static String numbered(int step) {
    return "step " + (step + 1) + " of " + Step.values().length;
  }

  private String text() {
    if (at == NOT_UNDER_WAY) {
      return """
          That was the lesson. What you made stays: mine() lists it, inputs() what you typed.
          Go on with examples(), words("claims"), or help() for all themes.""";
    }
    Words words = words().get(at);
    return capital(numbered(at)) + ": " + words.title() + "\n" + words.told();
  }

  private static String capital(String sentence) {
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }

  private synchronized Shown hint() {
    return new Said(
        at == NOT_UNDER_WAY
            ? "No lesson is under way."
            : "For example:\n  " + words().get(at).line());
  }

  private synchronized Lesson skip() {
    if (at != NOT_UNDER_WAY) {
      go(at + 1);
    }
    return new Page(this, text());
  }

  private synchronized Lesson restart() {
    go(0);
    return new Page(this, text());
  }

  private synchronized Shown leave() {
    if (at == NOT_UNDER_WAY) {
      return new Said("No lesson is under way.");
    }
    String text = "Left at " + numbered(at) + ". What you made stays; lesson() begins again.";
    at = NOT_UNDER_WAY;
    return new Said(text);
  }

  /** The lesson as its user sees it; it stays at the step where the guide stands. */
  private record Page(Guide guide, String text) implements Lesson {
    @Override
    public Shown hint() {
      return guide.hint();
    }

    @Override
    public Lesson skip() {
      return guide.skip();
    }

    @Override
    public Lesson restart() {
      return guide.restart();
    }

    @Override
    public Shown leave() {
      return guide.leave();
    }

    @Override
    public String toString() {
      return text;
    }
  }

  /** Read when a lesson begins, not at the start of a session. */
  private static final class Read {
    static final List<Words> WORDS = read();

    private Read() {}

    private static List<Words> read() {
      List<Words> all = new ArrayList<>();
      for (String block : file().split("\\n\\n+")) {
        List<String> lines = block.lines().filter(line -> !line.startsWith("#")).toList();
        if (lines.size() > 2) {
          int end = lines.size() - 1;
          String told = String.join("\n", lines.subList(1, end));
          all.add(new Words(lines.get(0), told, lines.get(end).strip()));
        }
      }
      return List.copyOf(all);
    }

    private static String file() {
      try (InputStream in = Guide.class.getResourceAsStream("lesson.txt")) {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static List<Words> words() {
    return Read.WORDS;
  }
}
