package org.leverbook.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** One cell of a notebook; never changes. */
public final class Cell {

  /** What a cell is. */
  public enum Kind {
    /** Java, and what it gave. */
    CODE,
    /** Text in Markdown. */
    MARKDOWN,
    /** Text for some other program, handed on as it is. */
    RAW
  }

  private final Kind kind;
  private final ObjectNode json;

  private Cell(Kind kind, ObjectNode json) {
    this.kind = kind;
    this.json = json;
  }

  /**
   * A new cell of code that has not been run.
   *
   * @param source the code
   * @return the cell
   */
  public static Cell code(String source) {
    ObjectNode json = bare("code", source);
    json.putNull("execution_count").putArray("outputs");
    return new Cell(Kind.CODE, json);
  }

  /**
   * A new cell of text.
   *
   * @param source Markdown
   * @return the cell
   */
  public static Cell prose(String source) {
    return new Cell(Kind.MARKDOWN, bare("markdown", source));
  }

  private static ObjectNode bare(String type, String source) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("cell_type", type).put("source", source).putObject("metadata");
    return json;
  }

  /** A cell as read; the reader has checked its parts. */
  static Cell read(Kind kind, ObjectNode json) {
    return new Cell(kind, json);
  }

  /**
   * What it is.
   *
   * @return the kind
   */
  public Kind kind() {
    return kind;
  }

  /**
   * Its name in the file.
   *
   * @return unique in its notebook; empty before the cell belongs to one
   */
  public String id() {
    return json.path("id").asText("");
  }

  /**
   * What is written in it.
   *
   * @return code or text
   */
  public String source() {
    return Lines.joined(json.get("source")).orElse("");
  }

  /**
   * The marks its author gave it.
   *
   * @return as in {@code raises-exception}
   */
  public List<String> tags() {
    List<String> tags = new ArrayList<>();
    json.path("metadata").path("tags").forEach(tag -> tags.add(tag.asText()));
    return tags;
  }

  /**
   * What it gave when it was last run.
   *
   * @return in order
   */
  public List<Output> outputs() {
    return OutputJson.read(json.path("outputs"));
  }

  /**
   * As which one it was last run.
   *
   * @return its number, from 1; empty where it was not run
   */
  public OptionalInt count() {
    JsonNode count = json.path("execution_count");
    return count.canConvertToInt() ? OptionalInt.of(count.intValue()) : OptionalInt.empty();
  }

  /** Files that travel in the cell, by name. */
  Map<String, MimeBundle> attachments() {
    Map<String, MimeBundle> files = new LinkedHashMap<>();
    json.path("attachments")
        .properties()
        .forEach(file -> files.put(file.getKey(), OutputJson.bundle(file.getValue())));
    return files;
  }

  /**
   * The same cell after a run; or before any, with an empty number and no outputs.
   *
   * @param count as which one it was run
   * @param outputs what it gave
   * @return the changed cell
   */
  public Cell ran(OptionalInt count, List<Output> outputs) {
    ObjectNode changed = JsonNodeFactory.instance.objectNode();
    changed.setAll(json);
    OutputJson.putCount(changed, count);
    ArrayNode list = changed.putArray("outputs");
    outputs.forEach(output -> list.add(OutputJson.of(output, count)));
    return new Cell(kind, changed);
  }

  Cell named(String id) {
    ObjectNode changed = JsonNodeFactory.instance.objectNode();
    changed.setAll(json);
    changed.put("id", id);
    return new Cell(kind, changed);
  }

  ObjectNode inFile() {
    return Lines.inFile(json);
  }
}
