package org.leverbook.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Saved;
import org.leverbook.quantity.Refused;

/**
 * A notebook: cells of text and code in order, with what the code gave, in the open notebook format
 * (nbformat 4.5). Never changes; what this class does not know of a file it keeps.
 */
public final class Notebook {

  private final ObjectNode head;
  private final List<Cell> cells;

  /** A notebook of what a file says around its cells, and these. */
  Notebook(ObjectNode head, List<Cell> cells) {
    this.head = head;
    this.cells = List.copyOf(CellIds.given(cells));
  }

  /**
   * Reads a notebook file.
   *
   * @param path a file in nbformat 4; older minor versions are taken up to 4.5
   * @return the notebook
   * @throws Refused if there is no such file, or it is no notebook, or one of format 3
   */
  public static Notebook read(Path path) {
    return NotebookReader.read(path.toString(), TextFile.read(path));
  }

  /**
   * A new notebook of cells that have not been run.
   *
   * @param cells in order
   * @return the notebook
   */
  public static Notebook ofCells(List<Cell> cells) {
    ObjectNode head = JsonNodeFactory.instance.objectNode();
    head.put("nbformat", 4).put("nbformat_minor", 5);
    ObjectNode metadata = head.putObject("metadata");
    metadata
        .putObject("kernelspec")
        .put("display_name", "Leverbook")
        .put("language", "java")
        .put("name", "leverbook");
    metadata
        .putObject("language_info")
        .put("name", "java")
        .put("file_extension", ".java")
        .put("mimetype", "text/x-java");
    return new Notebook(head, cells);
  }

  /**
   * A new notebook of code under a title.
   *
   * @param code the code of each cell, in order
   * @param title the heading; none where it is blank
   * @return the notebook
   */
  public static Notebook of(List<String> code, String title) {
    List<Cell> cells = new ArrayList<>();
    if (!title.isBlank()) {
      cells.add(Cell.prose("# " + title.strip()));
    }
    code.forEach(source -> cells.add(Cell.code(source)));
    return ofCells(cells);
  }

  /**
   * All cells.
   *
   * @return in order
   */
  public List<Cell> cells() {
    return cells;
  }

  /**
   * The code of every cell of code that is not blank.
   *
   * @return in order
   */
  public List<String> codeCells() {
    return cells.stream()
        .filter(cell -> cell.kind() == Cell.Kind.CODE && !cell.source().isBlank())
        .map(Cell::source)
        .toList();
  }

  /**
   * The same notebook with other cells.
   *
   * @param changed the cells, in order
   * @return the changed notebook
   */
  public Notebook with(List<Cell> changed) {
    return new Notebook(head, changed);
  }

  /**
   * The language its code is in, as it says itself.
   *
   * @return as in {@code java} or {@code python}; empty where it does not say
   */
  public Optional<String> language() {
    JsonNode metadata = head.path("metadata");
    String said = metadata.path("language_info").path("name").asText("");
    said = said.isBlank() ? metadata.path("kernelspec").path("language").asText("") : said;
    return said.isBlank() ? Optional.empty() : Optional.of(said);
  }

  /**
   * The title: its author's, or the first heading.
   *
   * @return empty where there is none
   */
  public Optional<String> title() {
    String said = head.path("metadata").path("title").asText("");
    if (!said.isBlank()) {
      return Optional.of(said.strip());
    }
    return cells.stream()
        .filter(cell -> cell.kind() == Cell.Kind.MARKDOWN)
        .flatMap(cell -> cell.source().lines())
        .filter(line -> line.matches("#{1,2} .*\\S.*"))
        .map(line -> line.replaceFirst("#+ +", "").replaceFirst("\\s+#+\\s*$", "").strip())
        .findFirst();
  }

  /**
   * The notebook as a file holds it.
   *
   * @return JSON, laid out as the format's reference writer does, ending in a line feed
   */
  public String text() {
    StringBuilder text = new StringBuilder();
    try {
      write(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /**
   * The notebook as a script: text as comments, code as it is, blank lines between.
   *
   * @return lines that end in a line feed
   */
  public String script() {
    List<String> parts = new ArrayList<>();
    for (Cell cell : cells) {
      String source = cell.source().strip();
      if (!source.isEmpty()) {
        parts.add(
            cell.kind() == Cell.Kind.CODE
                ? cell.source().stripTrailing()
                : source
                    .lines()
                    .map(l -> ("// " + l).stripTrailing())
                    .reduce((a, b) -> a + "\n" + b)
                    .orElse(""));
      }
    }
    return parts.isEmpty() ? "" : String.join("\n\n", parts) + "\n";
  }

  /**
   * Writes the notebook; under its name it appears when it is whole.
   *
   * @param name a file name, taken in the output folder; an absolute path stays as it is
   * @return what was written
   * @throws Refused if the disk says no
   */
  public Saved save(String name) {
    return new Saved(List.of(OutputFolder.writeText(name, this::write)));
  }

  private void write(Appendable out) throws IOException {
    ObjectNode all = JsonNodeFactory.instance.objectNode();
    all.setAll(head);
    ArrayNode list = all.putArray("cells");
    cells.forEach(cell -> list.add(cell.inFile()));
    JsonText.write(all, out);
  }
}
