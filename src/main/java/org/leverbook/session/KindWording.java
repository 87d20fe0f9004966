package org.leverbook.session;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A value of one kind that stands where another is needed, in words. */
final class KindWording {

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");
  private static final Pattern LITERAL =
      Pattern.compile("\"[^\"]*\"|-?[\\d._]+[dfDFlL]?|-?\\w+\\(-?[\\d.]*\\)|true|false");
  private static final Pattern QUOTED = Pattern.compile("\"\\s*(.*?)\\s*\"");
  private static final Pattern ASKED = Pattern.compile("(?s)(.+)\\.(\\w+)\\(\\)");

  private final Makers makers;
  private final FittingTypes types;
  private final Knowledge knowledge;

  KindWording(Makers makers, FittingTypes types, Knowledge knowledge) {
    this.makers = makers;
    this.types = types;
    this.knowledge = knowledge;
  }

  /**
   * Says what a word needs and what it got.
   *
   * @param who what needs it, as in "barbell(...)"
   * @param as what it needs in words, as in "a mass"
   * @param needed the type of that
   * @param given what stands there
   * @param type the type of that
   */
  String needs(String who, String as, String needed, String given, String type) {
    String said = who + " needs " + as + such(needed, given, type);
    return said + ", got " + got(given, type) + advice(who, needed, given, type) + ".";
  }

  /** How such a value is written, with the user's own number where there is one. */
  private String such(String needed, String given, String type) {
    Optional<String> constant = constant(needed, given);
    if (constant.isPresent()) {
      return " such as " + constant.get();
    }
    String number = number(given, type);
    boolean anyUnit = Kinds.of(needed).equals(Kinds.ANY_AMOUNT) && !number.isEmpty();
    if (anyUnit && !makers.units().isEmpty()) {
      return " such as " + makers.units().get(0) + "(" + number + ")";
    }
    String example = makers.example(Kinds.plain(needed), number);
    if (!example.isEmpty()) {
      return example.startsWith(given + "(") ? "" : " such as " + example;
    }
    return "";
  }

  /** How a value of a type is written; empty where no word makes one. */
  String example(String needed) {
    String example = makers.example(Kinds.plain(needed), "");
    return example.isEmpty() ? "" : " such as " + example;
  }

  private Optional<String> constant(String needed, String given) {
    Matcher quoted = QUOTED.matcher(given);
    String name = (quoted.matches() ? quoted.group(1) : given).toUpperCase(Locale.ROOT);
    return makers.constants(Kinds.plain(needed)).stream()
        .filter(each -> each.equals(name.replaceAll("[^A-Z0-9]+", "_")))
        .findFirst();
  }

  private static String number(String given, String type) {
    if (Kinds.isNumber(type) && given.length() <= 20) {
      return given;
    }
    Matcher number = NUMBER.matcher(given);
    return LITERAL.matcher(given).matches() && number.find() ? number.group() : "";
  }

  /** What stands there, and its kind where the look of it does not tell. */
  private static String got(String given, String type) {
    String brief = new Call.Argument(given, 0).brief();
    boolean plain = given.matches("-?[\\d._]+[dfDFlL]?|true|false");
    String kind = Kinds.a(type);
    return plain || type.isEmpty()
        ? brief
        : given.startsWith("\"") && kind.equals("a text")
            ? "the text " + brief
            : brief + ", " + kind;
  }

  private String advice(String who, String needed, String given, String type) {
    Matcher quoted = QUOTED.matcher(given);
    if (Kinds.isNumber(needed) && quoted.matches() && NUMBER.matcher(quoted.group(1)).matches()) {
      return ": write " + quoted.group(1) + " without quotes";
    }
    boolean unit = makers.units().contains(who.replace("(...)", ""));
    if (Kinds.isNumber(needed) && unit && type.startsWith("Quantity<")) {
      return " already: write " + given + " alone";
    }
    return way(needed, given, type);
  }

  /** How the value at hand leads to the needed one; empty where no single step does. */
  String way(String needed, String given, String type) {
    if (type.isEmpty() || Kinds.isNumber(needed) && Kinds.isNumber(type)) {
      return "";
    }
    if (type.startsWith("Quantity<") && Kinds.isNumber(needed)) {
      return ": its number is " + brief(given) + ".getValue().doubleValue()";
    }
    Matcher asked = ASKED.matcher(given);
    if (asked.matches()) {
      Optional<String> before = knowledge.type(asked.group(1));
      if (before.isPresent() && types.fits(before.get(), needed).orElse(false)) {
        return ": leave out ." + asked.group(2) + "()";
      }
    }
    boolean askable = !Kinds.plain(type).matches("String|[a-z]+|List<.*|Quantity<.*");
    List<String> giving = askable ? types.giving(type, needed) : List.of();
    if (giving.isEmpty() || needed.equals("String")) {
      return "";
    }
    List<String> ways =
        giving.stream().limit(2).map(word -> brief(given) + "." + word + "()").toList();
    return ": write " + Words.choice(ways);
  }

  private static String brief(String given) {
    return new Call.Argument(given, 0).brief();
  }
}
