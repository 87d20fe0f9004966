package org.leverbook.article;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.leverbook.display.Caution;
import org.leverbook.display.MovingPicture;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Picture;
import org.leverbook.display.Sheet;

/** Writes an article as Markdown, its pictures as files beside it. */
final class ArticleMarkdown {

  private final Article article;
  private final Labels labels;
  private final Numbering numbers;
  private final Back back;
  private final StringBuilder markdown = new StringBuilder();
  private final List<Path> written = new ArrayList<>();

  ArticleMarkdown(Article article) {
    this.article = article;
    this.labels = article.labels();
    this.numbers = article.numbering();
    this.back = article.back();
  }

  /**
   * Saves text and pictures.
   *
   * @param stem the name without its ending
   * @return the files, the text first
   */
  List<Path> save(String stem) {
    block("# " + literal(article.title()));
    if (!article.author().isEmpty()) {
      block("*" + literal(article.author()) + "*");
    }
    boolean placed = false;
    for (Part part : article.parts()) {
      if (part instanceof Part.MethodPlace) {
        method();
        placed = true;
      } else {
        part(part, stem);
      }
    }
    block("> **" + literal(labels.say("Caution")) + ".** " + literal(labels.say(Caution.TEXT)));
    if (!placed) {
      method();
    }
    reproduction();
    // The text comes last: where a picture cannot be written, no text speaks of it.
    Path text = OutputFolder.write(stem + ".md", markdown.toString().strip() + "\n");
    return Given.joined(List.of(text), written);
  }

  private void part(Part part, String stem) {
    if (part instanceof Part.Text text) {
      block(prose(text.words()));
    } else if (part instanceof Part.Heading heading) {
      block("## " + literal(heading.words()));
    } else if (part instanceof Part.Quote quote) {
      block(quoted(prose(quote.words()) + "\n\n— " + literal(quote.who())));
    } else if (part instanceof Part.Note note) {
      block(quoted(prose(note.words())));
    } else if (part instanceof Part.Tabled tabled) {
      caption(part, tabled.caption());
      block(SheetMarkdown.of(tabled.sheet()));
      Tables.notes(tabled.sheet()).forEach(note -> block(literal(note)));
    } else if (part instanceof Part.Pictured pictured) {
      picture(pictured.picture(), numbers.of(part), stem);
      caption(part, pictured.caption());
    }
  }

  private void picture(Picture picture, Numbering.Place place, String stem) {
    boolean moving = picture instanceof MovingPicture;
    String name = stem + "-" + place.anchor() + (moving ? ".gif" : ".svg");
    written.add(
        picture instanceof MovingPicture film
            ? OutputFolder.write(name, film.gifFile())
            : OutputFolder.write(name, picture.svgDocument()));
    String link = Path.of(name).getFileName().toString().replace("%", "%25").replace(" ", "%20");
    String told = picture.description().replaceAll("\\s+", " ").strip();
    block("![" + literal(told) + "](<" + link + ">)");
  }

  private void caption(Part part, Prose caption) {
    block("**" + literal(numbers.of(part).word()) + ".** " + prose(caption));
  }

  private void method() {
    block("## " + literal(labels.say("Method")));
    article.ownMethods().forEach(own -> block(prose(own)));
    for (Method.Paragraph told : back.method().paragraphs()) {
      block("**" + literal(labels.say(told.topic())) + ".** " + literal(told.text()));
    }
    if (!back.method().data().isEmpty()) {
      block("**" + literal(labels.say("Sources")) + ".**");
      StringBuilder list = new StringBuilder();
      back.method().data().forEach(d -> list.append("- ").append(literal(d)).append('\n'));
      block(list.toString());
    }
    back.method().limits().forEach(l -> block(literal(l)));
    back.untracedSentence().ifPresent(s -> block(literal(s)));
  }

  private void reproduction() {
    block("## " + literal(labels.say("To reproduce")));
    String which = labels.say(back.code().isPresent() ? Back.AGAIN : Back.KEEP);
    block(literal(back.versions() + " " + which));
    back.code().ifPresent(code -> block(fenced(code)));
  }

  /** A fence longer than any in the code. */
  private static String fenced(String code) {
    String fence = "```";
    while (code.contains(fence)) {
      fence += "`";
    }
    return fence + "java\n" + code + "\n" + fence;
  }

  private static String quoted(String text) {
    return "> " + text.strip().replace("\n", "\n> ");
  }

  private String prose(Prose prose) {
    return prose
        .markdown(name -> literal(numbers.called(name).map(Numbering.Place::word).orElse(name)))
        .strip();
  }

  private void block(String text) {
    markdown.append(text.strip()).append("\n\n");
  }

  private static String literal(String text) {
    return Prose.literal(text);
  }

  /** A table as Markdown; commonly understood, though not part of the first standard. */
  private static final class SheetMarkdown {

    private SheetMarkdown() {}

    static String of(Sheet sheet) {
      StringBuilder table = new StringBuilder("|");
      sheet.columns().forEach(c -> table.append(' ').append(literal(c.heading())).append(" |"));
      table.append("\n|");
      for (int c = 0; c < sheet.columns().size(); c++) {
        table.append(sheet.numeric(c) ? " ---: |" : " --- |");
      }
      for (int r = 0; r < sheet.rows().size(); r++) {
        table.append("\n|");
        for (String cell : sheet.shownRow(r)) {
          table.append(' ').append(literal(cell.replace('\n', ' '))).append(" |");
        }
      }
      return table.toString();
    }
  }
}
