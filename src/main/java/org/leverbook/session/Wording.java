package org.leverbook.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.Diag;

/**
 * The compiler's complaints in plain words. Each sort of complaint has a class that words it; the
 * rest stands in {@code compiler.txt}; what is not there either keeps the compiler's own words,
 * without the names of its wrappers.
 */
final class Wording {

  private static final String ERROR = "compiler.err.";

  /** Keys of complaints about the form of a text, not about its words and values. */
  private static final Pattern FORM =
      Pattern.compile(
          "expected\\d?|illegal\\.(start|char|dot|digit).*|not\\.stmt|premature\\.eof|unclosed\\.char\\.lit"
              + "|unclosed\\.str\\.lit|orphaned|malformed.*|invalid\\.meth\\.decl.*|else\\.without.*"
              + "|restricted.*|illegal\\.ref.*|dot\\.class.*|doesnt\\.exist|variable\\.not\\.allowed"
              + "|unexpected\\.type|int\\.number.*|class\\.public.*|illegal\\.paren.*|cant\\.ref.*"
              + "|array\\.dimension.*|underscore.*|illegal\\.init.*|cant\\.infer.*array.*|pkg.*");

  private record Line(String key, Pattern pattern, String sentence) {}

  private final CallWording calls;
  private final UnknownWording unknown;
  private final OperatorWording operators;
  private final NeedWording needs;
  private List<Line> lines;

  Wording(Makers makers, FittingTypes types, Knowledge knowledge) {
    this.calls = new CallWording(makers, types, knowledge);
    this.unknown = new UnknownWording(makers, types, knowledge);
    this.operators = new OperatorWording(types);
    this.needs =
        new NeedWording(calls, new KindWording(makers, types, knowledge), types, knowledge);
  }

  /**
   * A complaint in words.
   *
   * @param diag the complaint
   * @param code what it is about
   */
  Told of(Diag diag, String code) {
    String key = key(diag);
    String message = message(diag);
    int at = within(code, diag.getPosition());
    int start = within(code, diag.getStartPosition());
    int end = within(code, diag.getEndPosition());
    boolean symbol = key.startsWith("cant.resolve");
    if (symbol || FORM.matcher(key).matches()) {
      Optional<Told> habit = Habits.of(code, at, symbol);
      if (habit.isPresent()) {
        return habit.get();
      }
    }
    Optional<Told> told = Optional.empty();
    if (symbol) {
      told = unknown.of(message, code, nameStart(code, at));
    } else if (key.startsWith("cant.apply.symbol")) {
      told = call(message, code, at, start);
    } else if (key.startsWith("prob.found.req")) {
      told = needs.of(message, code, start, end);
    } else if (key.startsWith("operator.cant.be.applied") || key.startsWith("incomparable")) {
      told = operators.of(message, code, at, start, end);
    }
    if (key.startsWith("illegal.char") && at < code.length()) {
      return new Told(Characters.refused(code, at), at);
    }
    if (key.equals("expected") && message.equals("';' expected") && isTop(code, at)) {
      String said =
          "Two things stand side by side here with nothing between them: a dot, a comma, a sign"
              + " such as +, or a ; between two statements.";
      return new Told(said, at);
    }
    return told.isPresent() ? told.get() : new Told(told(key, message), at);
  }

  private static boolean isTop(String code, int at) {
    Brackets before = new Brackets(code, 0);
    before.readTo(at);
    return before.closed() && !code.substring(at).isBlank();
  }

  private static String key(Diag diag) {
    String key = String.valueOf(diag.getCode());
    return key.startsWith(ERROR) ? key.substring(ERROR.length()) : key;
  }

  /** What the compiler says, without the appendix that explains its own variables. */
  private static String message(Diag diag) {
    String message = diag.getMessage(Locale.ENGLISH).replace("\r", "");
    int where = message.indexOf("\n  where ");
    return Words.unwrapped(where < 0 ? message : message.substring(0, where));
  }

  private static int within(String code, long position) {
    return (int) Math.max(0, Math.min(position, code.length()));
  }

  private Optional<Told> call(String message, String code, int at, int start) {
    Optional<Told> inRule = needs.ofRule(message, code, at);
    if (inRule.isPresent()) {
      return inRule;
    }
    int name = nameStart(code, at);
    Optional<Call> call =
        Call.named(code, name)
            .or(() -> Call.named(code, start))
            .or(() -> Call.named(code, afterNew(code, start)));
    return call.flatMap(c -> calls.of(code, c)).or(() -> unfit(message, name));
  }

  private static int afterNew(String code, int start) {
    Matcher made = Pattern.compile("new\\s+").matcher(code).region(start, code.length());
    return made.lookingAt() ? made.end() : start;
  }

  private static Optional<Told> unfit(String message, int at) {
    Matcher name = Pattern.compile("(?:method|constructor|found for) (\\w+)").matcher(message);
    return name.find()
        ? Optional.of(
            new Told(name.group(1) + "(...) cannot be asked with what its brackets hold.", at))
        : Optional.empty();
  }

  /** Where the word begins that a complaint points at: javac points at the dot before it. */
  static int nameStart(String code, int position) {
    int at = Math.max(0, Math.min(position, code.length()));
    if (at < code.length() && code.charAt(at) == '.') {
      at++;
      while (at < code.length() && Character.isWhitespace(code.charAt(at))) {
        at++;
      }
    }
    return at;
  }

  private String told(String key, String message) {
    for (Line line : lines()) {
      if (line.key().equals(key)) {
        Matcher found = line.pattern().matcher(message);
        if (found.find()) {
          return tokens(Sentences.filled(line.sentence(), found.toMatchResult(), message));
        }
      }
    }
    return plain(message);
  }

  private synchronized List<Line> lines() {
    if (lines == null) {
      lines = new ArrayList<>();
      for (String line : Sentences.lines("compiler.txt")) {
        String[] cells = line.split(" \\| ", 3);
        Pattern pattern = Pattern.compile(cells[1].equals("*") ? "" : cells[1]);
        lines.add(new Line(cells[0], pattern, cells[2]));
      }
    }
    return lines;
  }

  private static String tokens(String sentence) {
    return sentence.replace("<identifier>", "name").replace("token.identifier", "name");
  }

  /** The compiler's own words where there are none of ours. */
  private static String plain(String message) {
    StringBuilder kept = new StringBuilder();
    for (String line : message.split("\n")) {
      if (!line.strip().startsWith("location:")) {
        kept.append(kept.length() == 0 ? "" : "; ").append(line.strip());
      }
    }
    String text =
        Words.capital(
            tokens(
                Words.cleaned(kept.toString())
                    .replaceAll("capture#\\d+ of ", "")
                    .replaceAll("(?:CAP|INT)#\\d+", "a type")
                    .replaceAll("\\? (?:extends|super) ", "")
                    .replaceAll("\\s+", " ")
                    .strip()));
    return text.isEmpty() ? "This is not understood." : text.matches(".*[.?]$") ? text : text + ".";
  }
}
