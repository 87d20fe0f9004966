package org.leverbook.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leverbook.data.Version;

/**
 * What worked in a session as code that runs again. A result that was used by its hidden name
 * ({@code $7}) gets a name of its own: in another run it would have another number.
 */
final class ScriptText {

  private static final String HEAD = "// Leverbook ";
  private static final String HEAD_END =
      ": what worked in a session, in order. Runs again as it is.";

  /** Texts are looked over, so that what stands in quotes stays. */
  private static final Pattern HIDDEN =
      Pattern.compile("\"(?:\\\\.|[^\"\\\\\\n])*\"|(?<![\\w$])\\$(\\d+)(?![\\w$])");

  private static final Pattern OLD_HEAD =
      Pattern.compile("(?m)^" + HEAD + "\\S+" + Pattern.quote(HEAD_END) + "\\R*");

  private ScriptText() {}

  /** One text for each input of which something stands. */
  static List<String> cells(List<Entry> entries) {
    Set<String> used = new LinkedHashSet<>();
    for (Entry entry : entries) {
      for (Entry.Done piece : entry.done()) {
        if (piece.stands()) {
          mentions(piece.code(), used);
        }
      }
    }
    List<String> cells = new ArrayList<>();
    for (Entry entry : entries) {
      String cell = cell(entry, used);
      if (!cell.isBlank()) {
        cells.add(cell);
      }
    }
    return cells;
  }

  private static void mentions(String code, Set<String> used) {
    Matcher hidden = HIDDEN.matcher(code);
    while (hidden.find()) {
      if (hidden.group(1) != null) {
        used.add(hidden.group());
      }
    }
  }

  private static String cell(Entry entry, Set<String> used) {
    StringBuilder text = new StringBuilder();
    boolean leftOut = false;
    for (Entry.Done piece : entry.done()) {
      if (!piece.stands()) {
        leftOut = true;
        continue;
      }
      // A line that begins with a sign would go on with the line before the gap.
      text.append(leftOut && text.length() > 0 ? "\n\n" : "");
      leftOut = false;
      String code = piece.text();
      if (piece.result().filter(used::contains).isPresent()) {
        String own = piece.result().get().replace("$", "result");
        code =
            "var " + own + " = " + piece.code().strip().replaceAll(";$", "") + ";\n" + own + "\n";
      }
      text.append(HIDDEN.matcher(code).replaceAll(ScriptText::named));
    }
    String unix = text.toString().replace("\r\n", "\n").replace('\r', '\n');
    return OLD_HEAD.matcher(unix).replaceAll("").strip();
  }

  private static String named(java.util.regex.MatchResult found) {
    return Matcher.quoteReplacement(
        found.group(1) == null ? found.group() : "result" + found.group(1));
  }

  /** The whole script. */
  static String of(List<Entry> entries) {
    return HEAD + Version.number() + HEAD_END + "\n\n" + String.join("\n\n", cells(entries)) + "\n";
  }
}
