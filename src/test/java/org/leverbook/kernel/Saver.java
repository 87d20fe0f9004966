package org.leverbook.kernel;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.impl.history.DefaultHistory;
import org.jline.terminal.TerminalBuilder;
import org.leverbook.display.OutputFolder;
import org.leverbook.language.Vocabulary;
import org.leverbook.notebook.Cell;
import org.leverbook.notebook.CodeShown;
import org.leverbook.notebook.Notebook;
import org.leverbook.notebook.Page;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.Table;

/** A process that saves all kinds of files again and again, until it is killed. */
final class Saver {

  static final int LINES = 400;

  private Saver() {}

  /** Saves in the folder named; each file of generation n holds n in every line. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Path.of(arguments[0]);
    OutputFolder.choose(folder);
    HistoryFile kernel = new HistoryFile(folder.resolve("kernel-history"), new Log(System.err));
    LineReader reader =
        LineReaderBuilder.builder()
            .terminal(
                TerminalBuilder.builder()
                    .dumb(true)
                    .streams(new ByteArrayInputStream(new byte[0]), new ByteArrayOutputStream())
                    .build())
            .variable(LineReader.HISTORY_FILE, folder.resolve("history"))
            .history(new DefaultHistory())
            .build();
    reader.getHistory().attach(reader);
    int begin = Integer.parseInt(arguments[1]);
    for (int n = begin; true; n++) {
      save(folder, n);
      kernel.add(new HistoryFile.Entry(kernel.session(), n, ("kept " + n + " ").repeat(500), ""));
      // As the shell does: each input is written when it is done.
      reader.getHistory().add(Instant.now(), "kept " + (n + " ").repeat(50));
      Path copy = folder.resolve(".long");
      Files.copy(folder.resolve("long-source"), copy, StandardCopyOption.REPLACE_EXISTING);
      Files.move(copy, folder.resolve("long-history"), StandardCopyOption.ATOMIC_MOVE);
      new HistoryFile(folder.resolve("long-history"), new Log(System.err));
      if (n == begin) {
        Files.createFile(folder.resolve("begun-" + begin));
      }
    }
  }

  static void save(Path folder, int n) {
    List<String> code = Collections.nCopies(LINES, "kept = " + n);
    Notebook notebook = Notebook.ofCells(code.stream().map(Cell::code).toList());
    notebook.save("lesson.ipynb");
    OutputFolder.write("lesson.jsh", String.join("\n", code) + "\n// end " + n + "\n");
    OutputFolder.write("page.html", new Page(notebook, "page", CodeShown.SHOWN, folder).html());
    int[] numbers = new int[LINES];
    java.util.Arrays.fill(numbers, n);
    Table table = Table.create("kept", IntColumn.create("kept", numbers));
    Vocabulary.save(table, "table.csv");
    Vocabulary.save(table, "table.json");
  }
}
