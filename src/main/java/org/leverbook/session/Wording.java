package org.leverbook.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.Diag;

/**
 * The compiler's complaints in plain words. What has no plain wording here keeps the compiler's
 * own, without the names of its wrappers.
 */
final class Wording {

  private static final Pattern SYMBOL =
      Pattern.compile("symbol:\\s+(?:static )?(\\w+) ([\\p{L}_$][\\p{L}\\p{N}_$]*)(\\(.*\\))?");
  private static final Pattern OWNER =
      Pattern.compile("location:\\s+(?:variable \\S+ of type |class |interface |record )(\\S+.*)");
  private static final Pattern CONVERSION =
      Pattern.compile(
          "(?:incompatible types: |argument mismatch; )"
              + "(?:.*lossy conversion from )?(\\S.*?) (?:cannot be converted )?to (\\S[^\\n)]*)");
  private static final Pattern CALL =
      Pattern.compile(
          "(?:method|constructor) (\\S+) in .*?required:\\s+(.*?)\\s*\\n\\s*found:\\s+(.*?)\\s*\\n"
              + "\\s*reason: (.*)",
          Pattern.DOTALL);

  private static final Pattern CALLS =
      Pattern.compile("no suitable (?:method|constructor) found for (\\w+)\\((.*)\\)");
  private static final Pattern FORM =
      Pattern.compile(
          "(?:method|constructor) (?:\\S*\\.)?(?:<.*?>)?\\w+\\((.*)\\) is not applicable");

  private final Makers makers;

  Wording(Makers makers) {
    this.makers = makers;
  }

  /**
   * A complaint in words.
   *
   * @param diag the complaint
   * @param unit the code it is about
   * @param candidates from a place in the unit to the words that could stand there
   */
  String of(Diag diag, String unit, IntFunction<List<String>> candidates) {
    String code = String.valueOf(diag.getCode());
    String message = diag.getMessage(Locale.ENGLISH).replace("\r", "");
    if (code.startsWith("compiler.err.cant.resolve")) {
      return unknownWord(message, nameStart(unit, (int) diag.getPosition()), candidates);
    }
    Matcher call = CALL.matcher(message);
    if (code.startsWith("compiler.err.cant.apply.symbol") && call.find()) {
      return wrongCall(call);
    }
    Matcher calls = CALLS.matcher(message);
    if (code.startsWith("compiler.err.cant.apply.symbols") && calls.find()) {
      return wrongForm(calls.group(1), calls.group(2), message);
    }
    Matcher conversion = CONVERSION.matcher(message);
    if (code.startsWith("compiler.err.prob.found.req") && conversion.find()) {
      return wrongKind(Words.cleaned(conversion.group(1)), Words.cleaned(conversion.group(2)));
    }
    return switch (code) {
      case "compiler.err.expected" -> "Here is missing: " + after(message, " expected") + ".";
      case "compiler.err.premature.eof" -> "The text ends before this is finished.";
      case "compiler.err.unclosed.str.lit" -> "This quoted text is never closed by a \".";
      case "compiler.err.not.stmt" -> "This alone is no statement.";
      default -> sentence(withoutWrapperLines(message));
    };
  }

  /** Where the word begins that a complaint points at: javac points at the dot before it. */
  static int nameStart(String unit, int position) {
    int at = Math.max(0, Math.min(position, unit.length()));
    if (at < unit.length() && unit.charAt(at) == '.') {
      at++;
      while (at < unit.length() && Character.isWhitespace(unit.charAt(at))) {
        at++;
      }
    }
    return at;
  }

  private String unknownWord(String message, int at, IntFunction<List<String>> candidates) {
    Matcher symbol = SYMBOL.matcher(message);
    if (!symbol.find()) {
      return sentence(withoutWrapperLines(message));
    }
    String word = symbol.group(2);
    boolean called = symbol.group(3) != null;
    Matcher owner = OWNER.matcher(message);
    String type = owner.find() ? Words.cleaned(owner.group(1)).strip() : "";
    List<String> near = Spelling.nearest(word, candidates.apply(at));
    boolean method = near.contains(word + "(") || near.contains(word + "()");
    if (method && !called) {
      return "\"" + word + "\" needs its brackets: " + word + "().";
    }
    if (called && near.contains(word)) {
      return "\"" + word + "\" takes no brackets.";
    }
    String there =
        type.isEmpty()
            ? "There is no word \"" + word + "\""
            : capital(Words.article(type)) + " has no word \"" + word + "\"";
    return near.isEmpty() ? there + "." : there + ": did you mean " + Words.choice(near) + "?";
  }

  private String wrongCall(Matcher call) {
    String name = call.group(1);
    String required = "no arguments".equals(call.group(2)) ? "" : Words.cleaned(call.group(2));
    String found = "no arguments".equals(call.group(3)) ? "" : Words.cleaned(call.group(3));
    String said = name + "(" + required + ") cannot take (" + found + ")";
    Matcher conversion = CONVERSION.matcher(call.group(4));
    return conversion.find()
        ? said
            + ": "
            + wrongKind(Words.cleaned(conversion.group(1)), Words.cleaned(conversion.group(2)))
        : said + ".";
  }

  /** A word that can be called in several ways, but not in this one. */
  private String wrongForm(String name, String given, String message) {
    List<String> forms = new ArrayList<>();
    Matcher form = FORM.matcher(message);
    while (form.find()) {
      String required = form.group(1).equals("no arguments") ? "" : Words.cleaned(form.group(1));
      forms.add("(" + required + ")");
    }
    String found = given.equals("no arguments") ? "" : Words.cleaned(given);
    String said = name + "(" + found + ") is not possible; " + name;
    said += " takes " + Words.choice(forms) + ".";
    Matcher conversion = CONVERSION.matcher(message);
    return conversion.find()
        ? said
            + " "
            + wrongKind(Words.cleaned(conversion.group(1)), Words.cleaned(conversion.group(2)))
        : said;
  }

  private String wrongKind(String found, String needed) {
    String said = Words.article(found) + " stands where " + Words.article(needed) + " is needed";
    List<String> words = makers.of(needed);
    return words.isEmpty()
        ? capital(said) + "."
        : capital(said) + "; " + Words.choice(words) + " would make one.";
  }

  private static String withoutWrapperLines(String message) {
    StringBuilder kept = new StringBuilder();
    for (String line : message.split("\n")) {
      if (!line.matches("\\s*location: .*\\$JShell\\$.*")) {
        kept.append(kept.length() == 0 ? "" : "\n").append(line.stripTrailing());
      }
    }
    return Words.cleaned(kept.toString());
  }

  private static String after(String message, String ending) {
    return message.endsWith(ending)
        ? message.substring(0, message.length() - ending.length())
        : message;
  }

  private static String sentence(String message) {
    String text = capital(message.strip());
    return text.endsWith(".") || text.endsWith("?") ? text : text + ".";
  }

  private static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
