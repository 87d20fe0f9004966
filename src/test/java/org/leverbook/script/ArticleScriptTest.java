package org.leverbook.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.display.OutputFolder;

/** The example of an article, from its script to the files that a reader gets. */
class ArticleScriptTest {

  @Test
  void the_example_writes_its_page_its_markdown_and_its_pictures(@TempDir Path folder)
      throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream said = new PrintStream(out, true, StandardCharsets.UTF_8);
    OutputFolder.choose(folder);
    try {
      assertThat(new ScriptRun(said, said).run(Path.of("notebooks", "article.jsh")))
          .as(out.toString(StandardCharsets.UTF_8))
          .isTrue();
    } finally {
      OutputFolder.choose(Path.of(""));
    }
    try (var files = Files.list(folder)) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrder(
              "hinge-article.html",
              "hinge-article.md",
              "hinge-article-figure-1.svg",
              "hinge-article-figure-2.svg");
    }
    assertThat(folder.resolve("hinge-article.md"))
        .content()
        .contains("# What the start of a hinge asks of the low back", "invented example")
        .contains("](<hinge-article-figure-2.svg>)", "## Method", "## To reproduce");
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("Table 1 {moments}:", "saved ");
  }
}
