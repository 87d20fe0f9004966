package org.leverbook.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Long texts in notebooks: one string or a list of lines; written as lines. */
final class Lines {

  /** Where the reference writer of the format ends a line. */
  private static final Pattern END =
      Pattern.compile("\r\n|[\n\r\u000B\u000C\u001C\u001D\u001E\u0085\u2028\u2029]");

  private Lines() {}

  /** The whole text; empty where the node is neither a string nor a list of strings. */
  static Optional<String> joined(JsonNode node) {
    if (node == null) {
      return Optional.empty();
    }
    if (node.isTextual()) {
      return Optional.of(node.textValue());
    }
    if (!node.isArray()) {
      return Optional.empty();
    }
    StringBuilder text = new StringBuilder();
    for (JsonNode line : node) {
      if (!line.isTextual()) {
        return Optional.empty();
      }
      text.append(line.textValue());
    }
    return Optional.of(text.toString());
  }

  /** The text as a list of lines, each with its end. */
  static ArrayNode split(String text) {
    ArrayNode lines = JsonNodeFactory.instance.arrayNode();
    Matcher end = END.matcher(text);
    int from = 0;
    while (end.find()) {
      lines.add(text.substring(from, end.end()));
      from = end.end();
    }
    if (from < text.length()) {
      lines.add(text.substring(from));
    }
    return lines;
  }

  /** The cell with every long text as lines; a copy where something changes. */
  static ObjectNode inFile(ObjectNode cell) {
    ObjectNode copy = cell.deepCopy();
    splitField(copy, "source");
    copy.path("attachments").forEach(Lines::splitBundle);
    copy.path("outputs")
        .forEach(
            output -> {
              splitBundle(output.path("data"));
              if (output instanceof ObjectNode printed) {
                splitField(printed, "text");
              }
            });
    if (copy.path("metadata") instanceof ObjectNode metadata) {
      // Whether to trust a cell is for each reader to find out anew.
      metadata.remove("trusted");
    }
    return copy;
  }

  private static void splitBundle(JsonNode node) {
    if (node instanceof ObjectNode bundle) {
      for (String type : bundle.properties().stream().map(e -> e.getKey()).toList()) {
        if (type.startsWith("text/")
            || type.equals(MimeBundle.SVG)
            || type.equals("application/javascript")) {
          splitField(bundle, type);
        }
      }
    }
  }

  private static void splitField(ObjectNode owner, String field) {
    if (owner.path(field).isTextual()) {
      owner.set(field, split(owner.path(field).textValue()));
    }
  }
}
