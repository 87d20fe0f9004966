package org.leverbook.desk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.leverbook.display.InputFile;
import org.leverbook.display.OutputFolder;
import org.leverbook.notebook.Notebook;
import org.leverbook.quantity.Refused;

/**
 * A file of code that a session runs.
 *
 * @param name as the user named it
 * @param path where it is
 * @param text its code
 */
record LessonFile(String name, Path path, String text) {

  /** Reads a file; looked for where files are saved, then where files are read. */
  static LessonFile read(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    if (!lower.endsWith(".jsh") && !lower.endsWith(".ipynb")) {
      throw new Refused(
          "A script's name ends in .jsh, a notebook's in .ipynb; \"" + name + "\" does not.");
    }
    Path saved = OutputFolder.resolve(name);
    Path path = Files.isRegularFile(saved) ? saved : InputFile.find("file", name);
    String text = lower.endsWith(".ipynb") ? notebook(name, path) : script(name, path);
    return new LessonFile(name, path.toAbsolutePath().normalize(), text);
  }

  private static String notebook(String name, Path path) {
    Notebook notebook = Notebook.read(path);
    String language = notebook.language().orElse("java");
    if (!language.equalsIgnoreCase("java")) {
      throw new Refused(name + " is a notebook in " + language + "; here only Java can be run.");
    }
    return String.join("\n\n", notebook.codeCells());
  }

  private static String script(String name, Path path) {
    try {
      ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(path));
      String text = StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new Refused(name + " is not UTF-8 text; save it as UTF-8 in your editor.", e);
    } catch (IOException e) {
      throw new Refused(name + " cannot be read: " + e + ".", e);
    }
  }
}
