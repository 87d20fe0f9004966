package org.leverbook.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * JSON as the reference writer of the notebook format lays it out: keys in order of the alphabet,
 * one blank for each level, letters beyond ASCII as they are. So a notebook that goes through two
 * programs differs only where its content does.
 */
final class JsonText {

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
    } else {
      out.append(node.toString());
    }
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
