package org.leverbook.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * JSON as the reference writer of the notebook format lays it out: keys in order of the alphabet,
 * one blank for each level, letters beyond ASCII as they are. So a notebook that goes through two
 * programs differs only where its content does.
 */
final class JsonText {

  private static final int LEAST_PLAIN = -4;
  private static final int MOST_PLAIN = 15;

  private final Appendable out;

  private JsonText(Appendable out) {
    this.out = out;
  }

  static void write(JsonNode node, Appendable out) throws IOException {
    new JsonText(out).value(node, 1);
    out.append('\n');
  }

  private void value(JsonNode node, int level) throws IOException {
    if (node.isObject()) {
      object(node, level);
    } else if (node.isArray()) {
      array(node, level);
    } else if (node.isTextual()) {
      quoted(node.textValue());
    } else if (node.isBigDecimal()) {
      out.append(number(node.decimalValue()));
    } else {
      out.append(node.toString());
    }
  }

  /** A number with a point as the reference writer tells it: 2.5, 100000.0, 1e-07. */
  private static String number(BigDecimal value) {
    int exponent = value.precision() - value.scale() - 1;
    if (value.signum() == 0 || exponent >= LEAST_PLAIN && exponent <= MOST_PLAIN) {
      String plain = value.toPlainString();
      return plain.contains(".") ? plain : plain + ".0";
    }
    String digits = value.unscaledValue().abs().toString().replaceFirst("(?<=.)0+$", "");
    String point = digits.length() > 1 ? "." : "";
    return String.format(
        Locale.ROOT,
        "%s%s%s%se%s%02d",
        value.signum() < 0 ? "-" : "",
        digits.substring(0, 1),
        point,
        digits.substring(1),
        exponent < 0 ? "-" : "+",
        Math.abs(exponent));
  }

  private void object(JsonNode node, int level) throws IOException {
    Map<String, JsonNode> sorted = new TreeMap<>();
    node.properties().forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
    String before = "{";
    for (Map.Entry<String, JsonNode> entry : sorted.entrySet()) {
      out.append(before);
      newLine(level);
      quoted(entry.getKey());
      out.append(": ");
      value(entry.getValue(), level + 1);
      before = ",";
    }
    close(before, "{}", "}", level);
  }

  private void array(JsonNode node, int level) throws IOException {
    String before = "[";
    for (JsonNode element : node) {
      out.append(before);
      newLine(level);
      value(element, level + 1);
      before = ",";
    }
    close(before, "[]", "]", level);
  }

  private void close(String before, String empty, String closer, int level) throws IOException {
    if (before.equals(",")) {
      newLine(level - 1);
      out.append(closer);
    } else {
      out.append(empty);
    }
  }

  private void newLine(int level) throws IOException {
    out.append('\n');
    for (int i = 0; i < level; i++) {
      out.append(' ');
    }
  }

  private void quoted(String text) throws IOException {
    out.append('"');
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= ' ' && c != '"' && c != '\\' && !isHalfPair(text, i)) {
        continue;
      }
      out.append(text, from, i).append(escape(c));
      from = i + 1;
    }
    out.append(text, from, text.length()).append('"');
  }

  private static String escape(char c) {
    return switch (c) {
      case '"' -> "\\\"";
      case '\\' -> "\\\\";
      case '\n' -> "\\n";
      case '\r' -> "\\r";
      case '\t' -> "\\t";
      case '\b' -> "\\b";
      case '\f' -> "\\f";
      default -> String.format(Locale.ROOT, "\\u%04x", (int) c);
    };
  }

  /** Half a pair of surrogates is no letter and cannot be written in UTF-8. */
  private static boolean isHalfPair(String text, int i) {
    char c = text.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
    }
    return Character.isLowSurrogate(c)
        && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
  }
}
