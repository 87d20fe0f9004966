package org.leverbook.session;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A place that needs another kind of value than it got, in words: calls, rules, names, conditions.
 */
final class NeedWording {

  private static final Pattern CONVERSION =
      Pattern.compile(
          "(?:.*lossy conversion from )?(\\S[^\\n;]*?) (?:cannot be converted )?to (\\S[^\\n)]*)$",
          Pattern.MULTILINE);
  private static final Pattern IN_RULE =
      Pattern.compile(
          "bad return type in (lambda expression|method reference)\\s+(.*?) cannot be converted to"
              + " ([^\\n)]*)",
          Pattern.DOTALL);
  private static final Pattern BOUNDS =
      Pattern.compile(
          "(?:equality constraints|upper bounds): (.*?)\\s*lower bounds: (.*?)\\)?$",
          Pattern.DOTALL);
  private static final Pattern NO_INSTANCE =
      Pattern.compile("exist so that (.*?) conforms to ([^\\n)]*)");
  private static final Pattern SET = Pattern.compile("([\\p{L}_$][\\w$]*)\\s*=\\s*$");
  private static final Pattern MADE =
      Pattern.compile("([\\w.<>\\[\\], ]+?)\\s+([\\p{L}_$][\\w$]*)\\s*=\\s*$");

  /** So much of what stands before a place is looked at. */
  private static final int LONGEST = 300;

  private final CallWording calls;
  private final KindWording kinds;
  private final FittingTypes types;
  private final Knowledge knowledge;

  NeedWording(CallWording calls, KindWording kinds, FittingTypes types, Knowledge knowledge) {
    this.calls = calls;
    this.kinds = kinds;
    this.types = types;
    this.knowledge = knowledge;
  }

  /** The complaint in words; empty where it is another. */
  Optional<Told> of(String message, String code, int start, int end) {
    Optional<Told> rule = ofRule(message, code, start);
    if (rule.isPresent()) {
      return rule;
    }
    if (message.contains("unexpected return value")) {
      return Optional.of(
          new Told("This method gives nothing (void): write its type before its name.", start));
    }
    if (message.contains("missing return value")) {
      return Optional.of(new Told("This method must give a value: return needs one.", start));
    }
    if (message.contains("not a functional interface")) {
      return Optional.of(
          new Told("A rule cannot stand here alone: it is handed to a word that takes it.", start));
    }
    String given = code.substring(Math.min(start, end), end);
    Matcher conversion = CONVERSION.matcher(stripped(message));
    Matcher none = NO_INSTANCE.matcher(message);
    Matcher kind = none.find() ? none : conversion;
    boolean converted = kind.equals(none) || conversion.find();
    String found = converted ? Kinds.plain(kind.group(1)) : "";
    String needed = converted ? Kinds.plain(kind.group(2)) : "";
    Optional<Told> call = inCall(code, start, found, needed);
    if (call.isPresent()) {
      return call;
    }
    if (converted) {
      return Optional.of(new Told(needed(code, start, given, found, needed), start));
    }
    Matcher bounds = BOUNDS.matcher(message);
    if (bounds.find()) {
      String wanted = Kinds.a(bounds.group(1).split(",")[0]);
      String held = Kinds.a(bounds.group(2).split(",")[0]);
      boolean whole = held.equals("a whole number") && wanted.equals("a number");
      String said = "This needs " + wanted + " at each place, but holds " + held;
      return Optional.of(new Told(said + (whole ? ": write whole ones with .0." : "."), start));
    }
    return Optional.empty();
  }

  private static String stripped(String message) {
    return message.replaceFirst("^incompatible types: ", "").replace("argument mismatch; ", "");
  }

  /** The call whose argument stands here. */
  private Optional<Told> inCall(String code, int start, String found, String needed) {
    return Call.around(code, start)
        .filter(call -> call.arguments().stream().anyMatch(each -> each.at() == start))
        .flatMap(
            call ->
                calls.of(code, call).or(() -> calls.argument(code, call, start, found, needed)));
  }

  private String needed(String code, int start, String given, String found, String needed) {
    String before = code.substring(Math.max(0, start - LONGEST), start);
    Matcher made = MADE.matcher(before);
    Matcher set = SET.matcher(before);
    if (needed.equals("boolean") && condition(before)) {
      return condition(before, given, found);
    }
    if (made.find() && !made.group(1).strip().matches(".*\\b(return|else)")) {
      return held(made.group(2), given, found, needed, true);
    }
    if (set.find()) {
      return held(set.group(1), given, found, needed, false);
    }
    if (before.stripTrailing().endsWith("return")) {
      return "This method gives "
          + Kinds.a(needed)
          + ", but returns "
          + Kinds.a(found)
          + kinds.way(needed, given, found)
          + ".";
    }
    if (before.matches("(?s).*\\(\\s*[\\w.<>]+\\s*\\)\\s*")) {
      return Words.capital(Kinds.a(found)) + " cannot be taken for " + Kinds.a(needed) + ".";
    }
    return kinds.needs("This place", Kinds.a(needed), needed, given, found);
  }

  private static String condition(String before, String given, String found) {
    Matcher single = Pattern.compile("(\\w+)\\s*=\\s*$").matcher(before);
    Matcher inside = Pattern.compile("\\s*(\\w+)\\s*=(?!=)\\s*(.*)", Pattern.DOTALL).matcher(given);
    String equal = "= gives a value, == compares: write ";
    if (single.find()) {
      return equal + single.group(1) + " == " + given + ".";
    }
    return inside.matches()
        ? equal + inside.group(1) + " == " + inside.group(2) + "."
        : "A condition must be true or false, and this is "
            + Kinds.a(found)
            + ": compare it, as in "
            + brief(given)
            + " > 5.";
  }

  /** A name whose kind was fixed before, or beside it, and a value of another. */
  private String held(String name, String given, String found, String needed, boolean declared) {
    Optional<String> quoted = quotedNumber(given, needed);
    boolean decimals = Kinds.isNumber(found) && Kinds.of(needed).equals("whole number");
    String is = decimals ? "has decimals" : "is " + Kinds.a(found);
    String said = name + " holds " + Kinds.a(needed) + ", but ";
    String way = declared ? kinds.way(needed, given, found) : "";
    if (quoted.isPresent()) {
      return said + quoted.get() + ".";
    }
    String instead = needed.endsWith("[]") ? "" : ". With var it takes any kind: var ";
    instead = instead.isEmpty() ? instead : instead + name + " = " + brief(given);
    return said + brief(given) + " " + is + way + (way.isEmpty() ? instead : "") + ".";
  }

  private static Optional<String> quotedNumber(String given, String needed) {
    Matcher quoted = Pattern.compile("\"\\s*(-?\\d+(?:\\.\\d+)?)\\s*\"").matcher(given);
    return Kinds.isNumber(needed) && quoted.matches()
        ? Optional.of(given + " is a text: write " + quoted.group(1) + " without quotes")
        : Optional.empty();
  }

  private static boolean condition(String before) {
    return before.matches("(?s).*\\b(?:if|while)\\s*\\([^;{}]*|(?s).*;[^;{}]*") || before.isBlank();
  }

  private static String brief(String given) {
    return new Call.Argument(given, 0).brief();
  }

  /** A rule that gives back the wrong kind, or nothing, or cannot be one; empty for others. */
  Optional<Told> ofRule(String message, String code, int at) {
    Matcher wrong = IN_RULE.matcher(message);
    if (wrong.find()) {
      return Optional.of(wrongResult(wrong, code, at));
    }
    if (message.contains("missing return value") && message.contains("lambda")
        || message.contains("lambda body is not")) {
      Optional<Call.Argument> rule = rule(code, at);
      return Optional.of(
          new Told(
              "The rule in braces gives nothing back: write return before its last statement, or"
                  + " leave out braces and semicolon.",
              rule.map(Call.Argument::at).orElse(at)));
    }
    if (message.contains("invalid method reference")) {
      Optional<Call.Argument> rule = rule(code, at);
      String named = rule.map(Call.Argument::brief).orElse("what stands around ::");
      return Optional.of(
          new Told(
              "Nothing can be asked by "
                  + named
                  + " here: write a rule with an arrow, as in "
                  + arrow(named)
                  + ".",
              rule.map(Call.Argument::at).orElse(at)));
    }
    return Optional.empty();
  }

  private Told wrongResult(Matcher wrong, String code, int at) {
    String found = Kinds.plain(wrong.group(2));
    String needed = Kinds.plain(wrong.group(3));
    Optional<Call.Argument> rule = rule(code, at);
    String text = rule.map(Call.Argument::brief).orElse("This rule");
    String said =
        (rule.isPresent() ? "The rule " + text : text)
            + " must give "
            + Kinds.a(needed)
            + ", but gives "
            + Kinds.a(found);
    int place = rule.map(Call.Argument::at).orElse(at);
    String whole = rule.map(Call.Argument::text).orElse("");
    if (needed.equalsIgnoreCase("boolean")) {
      List<String> ways = Kinds.isNumber(found) ? List.<String>of() : types.numbers(found);
      List<String> numbers = ways.stream().limit(3).map(n -> "." + n + "() > 5").toList();
      String compare = numbers.isEmpty() ? "> 5" : Words.choice(numbers);
      return new Told(said + ": end it with a comparison, such as " + compare + ".", place);
    }
    Optional<String> ending = types.giving(found, needed).stream().findFirst();
    if (ending.isPresent()) {
      String way =
          whole.contains("::")
              ? arrow(whole) + "." + ending.get() + "()"
              : "." + ending.get() + "()";
      String how = whole.contains("::") ? ": write " : ": end it with ";
      return new Told(said + how + way + ".", place);
    }
    Matcher asked = Pattern.compile("(?s).*\\.(\\w+)\\(\\)\\s*").matcher(whole);
    boolean oneLess =
        asked.matches()
            && whole.contains("->")
            && types.giving(needed, found).contains(asked.group(1));
    return new Told(said + (oneLess ? ": leave out ." + asked.group(1) + "()." : "."), place);
  }

  private static String arrow(String reference) {
    Matcher parts = Pattern.compile("(.*)::(\\w+)").matcher(reference);
    if (!parts.matches()) {
      return "x -> pull.start()";
    }
    String from = parts.group(1).strip();
    boolean type = Character.isUpperCase(from.charAt(0));
    return "x -> " + (type ? "lift" : from) + "." + parts.group(2) + "(x)";
  }

  /** The rule that stands at or around a place, or in the call that is named there. */
  private static Optional<Call.Argument> rule(String code, int at) {
    Optional<Call.Argument> around =
        Call.around(code, at)
            .flatMap(
                call ->
                    call.arguments().stream()
                        .filter(Call.Argument::isRule)
                        .filter(a -> a.at() <= at && at <= a.at() + a.text().length())
                        .findFirst());
    if (around.isPresent()) {
      return around;
    }
    int name = Wording.nameStart(code, at);
    int start = name;
    while (start > 0 && Character.isJavaIdentifierPart(code.charAt(start - 1))) {
      start--;
    }
    Optional<Call> named =
        Call.named(code, start).or(() -> Call.around(code, Math.min(code.length(), at + 1)));
    return named.flatMap(
        call -> call.arguments().stream().filter(Call.Argument::isRule).reduce((a, b) -> b));
  }
}
