package org.leverbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.display.OutputFolder;
import org.leverbook.quantity.Refused;

/** Notebook files: what is read, what is written, and what is said of a bad one. */
class NotebookTest {

  private static final String REFERENCE = "/notebook/reference.ipynb";

  @TempDir private Path folder;

  @AfterEach
  void forgetFolder() {
    OutputFolder.choose(Path.of(""));
  }

  private Notebook read(String text) throws IOException {
    return Notebook.read(Files.writeString(folder.resolve("lesson.ipynb"), text));
  }

  private static String resource(String name) throws IOException {
    try (var in = NotebookTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String file(int minor, String cells) {
    return "{\"nbformat\": 4, \"nbformat_minor\": "
        + minor
        + ", \"metadata\": {}, \"cells\": ["
        + cells
        + "]}";
  }

  private void refused(String text, String sentence) {
    assertThatThrownBy(() -> read(text))
        .isInstanceOf(Refused.class)
        .satisfies(
            e ->
                assertThat(e.getMessage().replace(folder + java.io.File.separator, ""))
                    .isEqualTo(sentence));
  }

  @Test
  void a_notebook_of_the_reference_writer_goes_through_without_a_changed_byte() throws IOException {
    String reference = resource(REFERENCE);

    assertThat(read(reference).text()).isEqualTo(reference);
    assertThat(Schema.complaints(reference)).isEmpty();
  }

  @Test
  void a_new_notebook_is_valid_and_reads_back() throws IOException {
    Notebook made = Notebook.of(List.of("var a = 1;", "a + 1\n"), "Arms & <moments>");

    assertThat(Schema.complaints(made.text())).isEmpty();
    assertThat(made.text()).endsWith("}\n");
    Notebook back = read(made.text());
    assertThat(back.codeCells()).containsExactly("var a = 1;", "a + 1\n");
    assertThat(back.title()).contains("Arms & <moments>");
    assertThat(back.language()).contains("java");
    assertThat(back.text()).isEqualTo(made.text());
  }

  @Test
  void every_kind_of_output_is_written_validly_and_read_back() throws IOException {
    MimeBundle picture =
        new MimeBundle(java.util.Map.of("text/plain", "p", "image/svg+xml", "<svg>\n</svg>"));
    List<Output> outputs =
        List.of(
            new Output.Printed("stdout", "one\ntwo"),
            new Output.Given(false, picture),
            new Output.Given(true, picture),
            new Output.Failed("Refused", "No.", List.of("line 1:1: No.", "x", "^")));
    Cell ran = Cell.code("x").ran(OptionalInt.of(1), outputs);

    String text = Notebook.ofCells(List.of(ran)).text();

    assertThat(Schema.complaints(text)).isEmpty();
    Cell back = read(text).cells().get(0);
    assertThat(back.outputs()).isEqualTo(outputs);
    assertThat(back.count()).hasValue(1);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4})
  void older_minor_formats_become_valid_4_5_with_the_same_ids_each_time(int minor)
      throws IOException {
    String old =
        file(
            minor,
            "{\"cell_type\": \"markdown\", \"metadata\": {}, \"source\": [\"# A\\n\", \"b\"]},"
                + "{\"cell_type\": \"code\", \"metadata\": {\"x\": 1}, \"source\": \"1\","
                + " \"outputs\": [], \"execution_count\": null},"
                + "{\"cell_type\": \"code\", \"metadata\": {}, \"source\": [\"1\"],"
                + " \"outputs\": [], \"execution_count\": null}");

    String text = read(old).text();

    assertThat(Schema.complaints(text)).isEmpty();
    assertThat(read(old).text()).isEqualTo(text);
    assertThat(read(text).text()).isEqualTo(text);
    assertThat(read(text).codeCells()).containsExactly("1", "1");
    assertThat(read(text).cells()).extracting(Cell::id).doesNotHaveDuplicates();
  }

  @Test
  void a_newer_minor_format_and_what_it_brings_stay() throws IOException {
    String newer = file(7, "").replace("\"metadata\"", "\"novelty\": {\"x\": [1]}, \"metadata\"");

    assertThat(read(newer).text()).contains("\"nbformat_minor\": 7").contains("\"novelty\": {");
  }

  @Test
  void repeated_and_malformed_ids_are_replaced_and_good_ones_stay() throws IOException {
    String cell = "{\"cell_type\":\"raw\",\"metadata\":{},\"source\":\"a\",\"id\":\"%s\"}";
    String cells =
        String.join(
            ",", cell.formatted("good"), cell.formatted("good"), cell.formatted("not good"));

    String text = read(file(5, cells)).text();

    assertThat(Schema.complaints(text)).isEmpty();
    assertThat(read(text).cells()).extracting(Cell::id).doesNotHaveDuplicates().startsWith("good");
  }

  @Test
  void cells_that_lack_parts_are_completed() throws IOException {
    String text = read("{\"nbformat\": 4, \"cells\": [{\"cell_type\": \"code\"}]}").text();

    assertThat(Schema.complaints(text)).isEmpty();
    assertThat(read(text).codeCells()).isEmpty();
  }

  @Test
  void half_a_surrogate_pair_survives_a_file() throws IOException {
    String text = Notebook.of(List.of("\"\\\ud83c\""), "").text();

    assertThat(text).contains("\\ud83c");
    assertThat(read(text).codeCells()).containsExactly("\"\\\ud83c\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "[1]|lesson.ipynb is no notebook: its JSON is not an object with cells.",
        "{\"cells\": []}|lesson.ipynb is no notebook: it does not say its format (\"nbformat\": 4).",
        "{\"nbformat\": 4}|lesson.ipynb is no notebook: it has no list of cells.",
        "{\"nbformat\": 5, \"cells\": []}|lesson.ipynb is of notebook format 5, which is newer than"
            + " the one read here, 4.",
        "{\"nbformat\": 4, \"cells\": [3]}|lesson.ipynb: cell 1 of the file is no object.",
        "{\"nbformat\": 4, \"cells\": [{\"cell_type\": \"heading\"}]}|lesson.ipynb: cell 1 of the"
            + " file is of kind \"heading\"; there are code, markdown and raw.",
        "{\"nbformat\": 4, \"cells\": [{\"cell_type\": \"raw\", \"source\": 3}]}|lesson.ipynb: the"
            + " source of cell 1 of the file is neither text nor lines.",
      })
  void what_is_no_notebook_is_refused_in_words(String text, String sentence) {
    refused(text, sentence);
  }

  @Test
  void broken_json_is_told_with_line_and_column() {
    refused(
        "{\n \"cells\": [\n  oops\n ]\n}\n",
        "lesson.ipynb is no notebook: its JSON breaks at line 3, column 3 (\"oops\" has"
            + " no place there).");
  }

  @Test
  void an_empty_file_is_told() {
    refused("\n", "lesson.ipynb is empty; a notebook is at least {\"cells\": [], …}.");
  }

  @Test
  void an_unfinished_merge_is_told_with_its_line() {
    refused(
        "{\n<<<<<<< HEAD\n \"cells\": []\n=======\n",
        "lesson.ipynb holds the marks of an unfinished merge (line 2); settle it first.");
  }

  @Test
  void format_3_is_told_with_how_to_convert_it() {
    assertThatThrownBy(() -> read("{\"nbformat\": 3, \"worksheets\": []}"))
        .hasMessageContaining("lesson.ipynb is of notebook format 3, which is old; format 4 is")
        .hasMessageContaining("jupyter nbconvert --to notebook --nbformat 4 ");
  }

  @Test
  void binary_garbage_is_told() throws IOException {
    Path file = Files.write(folder.resolve("x.ipynb"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 0});

    assertThatThrownBy(() -> Notebook.read(file))
        .isInstanceOf(Refused.class)
        .hasMessage(file + " is not UTF-8 text (line 1 is not); save it as UTF-8 in your editor.");
  }

  @Test
  void twenty_thousand_brackets_are_refused_and_do_not_overflow() {
    assertThatThrownBy(() -> read("[".repeat(20_000)))
        .isInstanceOf(Refused.class)
        .hasMessageEndingWith(
            "lesson.ipynb is no notebook: its JSON goes too deep, or has too long names.");
  }

  @Test
  void a_picture_of_thirty_megabytes_goes_through() throws IOException {
    Cell big =
        Cell.code("x")
            .ran(
                OptionalInt.of(1),
                List.of(
                    new Output.Given(
                        true,
                        new MimeBundle(java.util.Map.of("image/png", "A".repeat(30_000_000))))));
    String text = Notebook.ofCells(List.of(big)).text();

    assertThat(read(text).text()).isEqualTo(text);
  }

  @Test
  void a_file_too_large_to_be_read_is_told_with_its_size() throws IOException {
    Path file = folder.resolve("huge.ipynb");
    try (var huge = new java.io.RandomAccessFile(file.toFile(), "rw")) {
      huge.setLength(300_000_000);
    }

    assertThatThrownBy(() -> Notebook.read(file))
        .isInstanceOf(Refused.class)
        .hasMessage(file + " is too large: 300 MB, where 256 MB can be read.");
  }

  @Test
  void a_notebook_becomes_a_script_with_its_text_as_comments() {
    Notebook notebook =
        Notebook.ofCells(
            List.of(Cell.prose("# Title\n\nSome words."), Cell.code("1 + 1"), Cell.code(" ")));

    assertThat(notebook.script()).isEqualTo("// # Title\n//\n// Some words.\n\n1 + 1\n");
  }

  @Test
  void saving_writes_the_text_whole_into_the_output_folder() throws IOException {
    OutputFolder.choose(folder.resolve("made"));
    Notebook made = Notebook.of(List.of("1"), "T");

    assertThat(made.save("a.ipynb").text()).isEqualTo("saved " + folder.resolve("made/a.ipynb"));

    assertThat(folder.resolve("made/a.ipynb")).hasContent(made.text());
    try (var files = Files.list(folder.resolve("made"))) {
      assertThat(files).hasSize(1);
    }
  }
}
