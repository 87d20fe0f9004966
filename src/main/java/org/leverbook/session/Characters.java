package org.leverbook.session;

import java.util.Locale;
import java.util.Map;

/** Characters that no code holds, by name. */
final class Characters {

  private static final Map<Integer, String> INSTEAD =
      Map.ofEntries(
          Map.entry(0xB2, "a square is x * x"),
          Map.entry(0xB3, "a cube is x * x * x"),
          Map.entry(0xBD, "write 0.5"),
          Map.entry(0xBC, "write 0.25"),
          Map.entry(0xBE, "write 0.75"),
          Map.entry(0xB0, "an angle is written deg(35)"),
          Map.entry(0x2030, "a share is written percent(0.8)"),
          Map.entry(0x2264, "write <="),
          Map.entry(0x2265, "write >="),
          Map.entry(0x2260, "write !="),
          Map.entry(0x2248, "write a comparison with a limit"),
          Map.entry(0x221A, "a root is Math.sqrt(x)"),
          Map.entry(0x2192, "an arrow is written ->"),
          Map.entry(0x21D2, "an arrow is written ->"),
          Map.entry(0x2026, "three dots stand for something left out: write it in"),
          Map.entry(0xAB, "text stands in double quotes: \"hip\""),
          Map.entry(0xBB, "text stands in double quotes: \"hip\""),
          Map.entry((int) '`', "text stands in double quotes: \"hip\""),
          Map.entry((int) '#', "a remark begins with //"),
          Map.entry((int) '\\', "a line goes on by itself where a bracket is open"));

  private Characters() {}

  /** Whether a place of a text holds what cannot be seen, or is no character at all. */
  static boolean isUnseen(String text, int at) {
    char c = text.charAt(at);
    if (c < 0x80) {
      return c < ' ' && c != '\t' && c != '\n' && c != '\r' && c != '\f' || c == 0x7F;
    }
    if (Character.isHighSurrogate(c)) {
      return at + 1 == text.length() || !Character.isLowSurrogate(text.charAt(at + 1));
    }
    if (Character.isLowSurrogate(c)) {
      return at == 0 || !Character.isHighSurrogate(text.charAt(at - 1));
    }
    int type = Character.getType(c);
    return type == Character.CONTROL || type == Character.FORMAT || type == Character.PRIVATE_USE;
  }

  /** What to say of a character that cannot be seen. */
  static String unseen(String text, int at) {
    int code = text.charAt(at);
    String number = String.format(Locale.ROOT, "U+%04X", code);
    if (Character.isSurrogate((char) code)) {
      return "Here stands half a character ("
          + number
          + "), as is left where text was cut or decoded wrongly: delete it.";
    }
    return "Here stands a character that cannot be seen, "
        + name(code)
        + " ("
        + number
        + "): delete it, or type this line anew.";
  }

  /** What to say of a character that the compiler does not take. */
  static String refused(String text, int at) {
    int code = text.codePointAt(at);
    String shown = new String(Character.toChars(code));
    String instead = INSTEAD.get(code);
    String said = "The character " + shown + " cannot stand here";
    return instead != null
        ? said + ": " + instead + "."
        : said + (code < 0x80 ? "." : " (" + name(code) + "): it belongs only into quoted text.");
  }

  private static String name(int code) {
    String name = Character.getName(code);
    return name == null ? "unnamed" : name.toLowerCase(Locale.ROOT);
  }
}
