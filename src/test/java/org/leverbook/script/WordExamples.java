package org.leverbook.script;

import java.util.List;
import org.leverbook.language.Vocabulary;

/** The examples that stand with the words, in their order: each may use what those before made. */
public final class WordExamples {

  private WordExamples() {}

  /** One example a line, ready to be typed. */
  public static List<String> lines() {
    return Vocabulary.words()
        .text()
        .lines()
        .filter(line -> line.matches(" {6}\\S.*"))
        .map(String::strip)
        .toList();
  }
}
