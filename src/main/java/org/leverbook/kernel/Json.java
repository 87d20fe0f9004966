package org.leverbook.kernel;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** The JSON of the messages. */
final class Json {

  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

  private Json() {}

  static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  static ArrayNode array() {
    return MAPPER.createArrayNode();
  }

  /** Texts by name, in their order. */
  static ObjectNode object(Map<String, String> entries) {
    ObjectNode made = object();
    entries.forEach(made::put);
    return made;
  }

  static ArrayNode array(Iterable<String> texts) {
    ArrayNode made = array();
    texts.forEach(made::add);
    return made;
  }

  /**
   * One value.
   *
   * @throws IOException if the bytes are something else
   */
  static JsonNode read(byte[] bytes) throws IOException {
    // As text: bytes alone would make the reader guess at other encodings than the protocol's.
    return MAPPER.readTree(new String(bytes, StandardCharsets.UTF_8));
  }

  /** The value in one line; half of a surrogate pair, which UTF-8 cannot hold, becomes a "?". */
  static byte[] write(JsonNode value) {
    return line(value).getBytes(StandardCharsets.UTF_8);
  }

  static String line(JsonNode value) {
    try {
      return MAPPER.writeValueAsString(value);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The value as people read it. */
  static String page(JsonNode value) {
    return value.toPrettyString() + "\n";
  }

  /** A text of an object; empty where there is none of this name. */
  static String text(JsonNode object, String name) {
    return object.path(name).isTextual() ? object.path(name).textValue() : "";
  }

  /** Yes or no, where the object says so; else what is usual. */
  static boolean flag(JsonNode object, String name, boolean usual) {
    return object.path(name).isBoolean() ? object.path(name).booleanValue() : usual;
  }

  /** A whole number; one beyond the range of int is moved to its end. */
  static int number(JsonNode object, String name, int usual) {
    JsonNode found = object.path(name);
    if (!found.isNumber()) {
      return usual;
    }
    return (int) Math.max(Integer.MIN_VALUE, Math.min(Integer.MAX_VALUE, found.doubleValue()));
  }
}
