package org.leverbook.session;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the compiler takes although its writer will have meant something else; noted, not refused.
 */
final class Surprises {

  private static final Pattern WHOLE =
      Pattern.compile("(?<![\\w.)\\]])(\\d{1,19})\\s*([-+*/^])\\s*(\\d{1,19})(?![\\w.])");
  private static final Pattern RETURN = Pattern.compile("return\\b\\s*([^;]*);?\\s*");
  private static final int LONGEST = 10_000;

  private Surprises() {}

  /** What a unit that ran may surprise by, one sentence each. */
  static List<String> in(String code) {
    List<String> notes = new ArrayList<>();
    if (code.length() > LONGEST) {
      return notes;
    }
    Matcher back = RETURN.matcher(code);
    if (back.matches()) {
      String value = back.group(1).strip();
      notes.add(
          "return means nothing outside a method"
              + (value.isEmpty() ? "." : ": to see the value, write " + value + " alone."));
    }
    Matcher whole = WHOLE.matcher(code);
    Brackets reader = new Brackets(code, 0);
    while (whole.find()) {
      reader.readTo(whole.start());
      String note = reader.inWords() ? "" : whole(whole);
      if (!note.isEmpty()) {
        notes.add(note);
      }
    }
    return notes;
  }

  private static String whole(Matcher found) {
    BigInteger a = new BigInteger(found.group(1));
    BigInteger b = new BigInteger(found.group(3));
    String shown = found.group(1) + " " + found.group(2) + " " + found.group(3);
    switch (found.group(2)) {
      case "/":
        boolean rest = b.signum() != 0 && a.mod(b).signum() != 0;
        return rest
            ? shown
                + " divides whole numbers and drops the rest: it gives "
                + a.divide(b)
                + ". Write "
                + found.group(1)
                + ".0 / "
                + found.group(3)
                + " for decimals."
            : "";
      case "^":
        return "^ is no power in Java: Math.pow("
            + found.group(1)
            + ", "
            + found.group(3)
            + ") is.";
      case "*":
        return tooLarge(shown, a.multiply(b), found);
      case "+":
        return tooLarge(shown, a.add(b), found);
      default:
        return "";
    }
  }

  private static String tooLarge(String shown, BigInteger result, Matcher found) {
    return result.bitLength() <= 31
        ? ""
        : shown
            + " is more than a whole number holds, so it comes out wrong: write "
            + found.group(1)
            + ".0 "
            + found.group(2)
            + " "
            + found.group(3)
            + ".";
  }
}
