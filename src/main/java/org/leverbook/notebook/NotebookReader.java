package org.leverbook.notebook;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leverbook.data.ReadTrouble;
import org.leverbook.quantity.Refused;

/** From the text of a file to a notebook, or to a sentence that says why not. */
final class NotebookReader {

  private static final int MAJOR = 4;
  private static final int MINOR = 5;

  private static final Pattern MERGE = Pattern.compile("^(?:<{7} |>{7} |={7}$)", Pattern.MULTILINE);

  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      // Pictures inside a notebook are single long strings.
                      StreamReadConstraints.builder().maxStringLength(Integer.MAX_VALUE).build())
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          // Numbers go back to the file as they came.
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  private final String name;

  private NotebookReader(String name) {
    this.name = name;
  }

  static Notebook read(String name, String text) {
    return new NotebookReader(name).notebook(text);
  }

  private Notebook notebook(String text) {
    if (text.isBlank()) {
      throw new Refused(name + " is empty; a notebook is at least {\"cells\": [], …}.");
    }
    if (!(json(text) instanceof ObjectNode root)) {
      throw new Refused(name + " is no notebook: its JSON is not an object with cells.");
    }
    checkFormat(root);
    JsonNode list = root.get("cells");
    if (list == null || !list.isArray()) {
      throw new Refused(name + " is no notebook: it has no list of cells.");
    }
    List<Cell> cells = new ArrayList<>();
    for (JsonNode cell : list) {
      cells.add(cell(cells.size() + 1, cell));
    }
    root.remove("cells");
    root.put("nbformat_minor", Math.max(MINOR, root.path("nbformat_minor").asInt(0)));
    ObjectNode metadata = object(root, "metadata");
    metadata.remove(List.of("orig_nbformat", "orig_nbformat_minor", "signature"));
    return new Notebook(root, cells);
  }

  private JsonNode json(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (StreamConstraintsException e) {
      throw new Refused(
          name + " is no notebook: its JSON goes too deep, or has too long names.", e);
    } catch (JsonProcessingException e) {
      Matcher merge = MERGE.matcher(text);
      if (merge.find()) {
        long line = text.substring(0, merge.start()).chars().filter(c -> c == '\n').count() + 1;
        throw new Refused(
            name + " holds the marks of an unfinished merge (line " + line + "); settle it first.",
            e);
      }
      JsonLocation at = e.getLocation();
      String place =
          at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
      throw new Refused(
          name + " is no notebook: its JSON breaks" + place + " (" + ReadTrouble.json(e) + ").", e);
    }
  }

  private void checkFormat(ObjectNode root) {
    JsonNode said = root.path("nbformat");
    if (!said.canConvertToInt()) {
      throw new Refused(name + " is no notebook: it does not say its format (\"nbformat\": 4).");
    }
    int major = said.intValue();
    if (major < MAJOR) {
      throw new Refused(
          name
              + " is of notebook format "
              + major
              + ", which is old; format 4 is read. Convert it first, with Jupyter: jupyter"
              + " nbconvert --to notebook --nbformat 4 "
              + name);
    }
    if (major > MAJOR) {
      throw new Refused(
          name + " is of notebook format " + major + ", which is newer than the one read here, 4.");
    }
  }

  private Cell cell(int number, JsonNode node) {
    if (!(node instanceof ObjectNode cell)) {
      throw new Refused(name + ": cell " + number + " of the file is no object.");
    }
    String type = cell.path("cell_type").asText();
    Cell.Kind kind =
        switch (type) {
          case "code" -> Cell.Kind.CODE;
          case "markdown" -> Cell.Kind.MARKDOWN;
          case "raw" -> Cell.Kind.RAW;
          default ->
              throw new Refused(
                  name
                      + ": cell "
                      + number
                      + " of the file is of kind \""
                      + type
                      + "\"; there are code, markdown and raw.");
        };
    if (!cell.has("source")) {
      cell.putArray("source");
    }
    if (Lines.joined(cell.get("source")).isEmpty()) {
      throw new Refused(
          name + ": the source of cell " + number + " of the file is neither text nor lines.");
    }
    object(cell, "metadata");
    if (kind == Cell.Kind.CODE) {
      if (!cell.path("outputs").isArray()) {
        cell.putArray("outputs");
      }
      if (!cell.has("execution_count")) {
        cell.putNull("execution_count");
      }
    }
    return Cell.read(kind, cell);
  }

  private static ObjectNode object(ObjectNode owner, String field) {
    return owner.path(field) instanceof ObjectNode there ? there : owner.putObject(field);
  }
}
