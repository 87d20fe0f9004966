package org.leverbook.kernel;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.leverbook.session.Completeness;
import org.leverbook.session.Completion;
import org.leverbook.session.Session;

/** Completes, explains, and judges whether a text is finished. */
final class Assistant {

  private static final String INDENT = "  ";

  private final Session session;

  Assistant(Session session) {
    this.session = session;
  }

  /** Answers a complete_request. */
  ObjectNode complete(ObjectNode asked) {
    String code = Json.text(asked, "code");
    int cursor = CodePoints.place(code, asked.path("cursor_pos"));
    List<Completion> ways = session.completions(code, cursor);
    int from = ways.stream().mapToInt(Completion::from).min().orElse(cursor);
    int start = CodePoints.count(code, from);
    int end = CodePoints.count(code, cursor);
    ObjectNode reply = Json.object();
    reply.put("status", "ok");
    ArrayNode matches = reply.putArray("matches");
    reply.put("cursor_start", start);
    reply.put("cursor_end", end);
    // Pages that know this field show kind and signature beside each word.
    ArrayNode kinds = reply.putObject("metadata").putArray("_jupyter_types_experimental");
    for (Completion way : ways) {
      // One span serves all words; a word that begins later takes what lies before it along.
      String text = code.substring(from, way.from()) + way.text();
      matches.add(text);
      ObjectNode kind = kinds.addObject();
      kind.put("start", start).put("end", end).put("text", text).put("type", kind(way.text()));
      kind.put("signature", signature(way));
    }
    return reply;
  }

  private static String signature(Completion way) {
    boolean both = !way.signature().isEmpty() && !way.about().isEmpty();
    return way.signature() + (both ? " – " : "") + way.about();
  }

  private static String kind(String text) {
    if (text.endsWith("(") || text.endsWith("()")) {
      return "function";
    }
    if (text.matches("[A-Z][A-Z0-9_]*")) {
      return "constant";
    }
    return Character.isUpperCase(text.isEmpty() ? ' ' : text.charAt(0)) ? "class" : "instance";
  }

  /** Answers an inspect_request. */
  ObjectNode inspect(ObjectNode asked) {
    String code = Json.text(asked, "code");
    int cursor = CodePoints.place(code, asked.path("cursor_pos"));
    boolean whole = Json.number(asked, "detail_level", 0) >= 1;
    List<String> known = session.documentation(code, cursor, whole);
    if (known.isEmpty()) {
      // Between the brackets of a call, the call is meant.
      known = session.callAt(code, cursor).map(hint -> hint.forms()).orElse(List.of());
    }
    ObjectNode reply = Json.object();
    reply.put("status", "ok");
    reply.put("found", !known.isEmpty());
    ObjectNode data = reply.putObject("data");
    if (!known.isEmpty()) {
      data.put("text/plain", String.join("\n\n", known));
    }
    reply.putObject("metadata");
    return reply;
  }

  /** Answers an is_complete_request. */
  ObjectNode isComplete(ObjectNode asked) {
    String code = Json.text(asked, "code");
    ObjectNode reply = Json.object();
    Completeness found = session.completeness(code);
    switch (found) {
      case COMPLETE -> reply.put("status", "complete");
      case INVALID -> reply.put("status", "invalid");
      default -> reply.put("status", "incomplete").put("indent", indent(code));
    }
    return reply;
  }

  /** The answer before the session is ready. */
  static ObjectNode notKnownYet() {
    return Json.object().put("status", "unknown");
  }

  /** As far as the last line, and further where that line opens a bracket. */
  private static String indent(String code) {
    String last = code.substring(code.lastIndexOf('\n') + 1);
    String before = last.substring(0, last.length() - last.stripLeading().length());
    String end = last.strip();
    boolean opens = end.endsWith("{") || end.endsWith("(") || end.endsWith("->");
    return before + (opens ? INDENT : "");
  }
}
