package org.leverbook.article;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.leverbook.display.Kind;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Picture;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.figure.LabelWords;
import org.leverbook.figure.PicturePage;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * Text, tables and figures for readers: numbered, with the caution, the method of what was really
 * used, and what it takes to make it again.
 *
 * <p>{@code article("What a hinge asks").text("The low back bears {}.", start.moment(L5_S1))
 * .figure("arms", start.picture(), "The arms.").text("See {arms}.").save("hinge")} works; a text
 * with {@code {arm}} instead is refused when it is saved: "… did you mean "arms"?". A value: each
 * word gives another article and leaves this one as it was.
 */
public final class Article implements Shown {

  private static final Pattern NAME = Pattern.compile("[\\p{L}][\\p{L}\\p{N} _-]*");

  /** Nobody reads further; a file takes more. */
  private static final int MOST_ROWS = 500;

  private final String title;
  private final String author;
  private final List<Part> parts;
  private final List<Object> used;
  private final List<Prose> methods;
  private final Labels labels;

  private Article(
      String title,
      String author,
      List<Part> parts,
      List<Object> used,
      List<Prose> methods,
      Labels labels) {
    this.title = title;
    this.author = author;
    this.parts = List.copyOf(parts);
    this.used = List.copyOf(used);
    this.methods = List.copyOf(methods);
    this.labels = labels;
  }

  /**
   * An article that has a title only.
   *
   * @param title plain text
   * @return the article
   * @throws Refused if the title is missing or empty
   */
  public static Article of(String title) {
    return new Article(
        Given.text("title", title, "\"What a hinge asks of the low back\""),
        "",
        List.of(),
        List.of(),
        List.of(),
        Labels.ENGLISH);
  }

  /**
   * Says who wrote it.
   *
   * @param who plain text, as in "club coach, invented example"
   * @return the changed article
   */
  public Article by(String who) {
    return new Article(
        title, Given.text("author", who, "\"club coach\""), parts, used, methods, labels);
  }

  /**
   * Paragraphs in Markdown, with values put in: {@code text("The low back bears {}, {arms} shows
   * where.", start.moment(L5_S1))}.
   *
   * <p>{@code {}} takes the next value with digits that can be used, {@code {.1}} with one decimal;
   * {@code {arms}} becomes "Figure 1" where a figure or table is called so.
   *
   * @param words Markdown; a blank line begins a paragraph
   * @param values one for each {@code {}}, in order
   * @return the changed article
   * @throws Refused if the text is empty, values and places do not match, or a value is no number
   */
  public Article text(String words, Object... values) {
    return with(new Part.Text(prose("text", words, values)), values(values));
  }

  /**
   * A heading.
   *
   * @param words plain text
   * @return the changed article
   * @throws Refused if it is empty
   */
  public Article heading(String words) {
    return with(new Part.Heading(Given.text("heading", words, "\"At the start\"")), List.of());
  }

  /**
   * What somebody said.
   *
   * @param words Markdown, values put in as in {@link #text}
   * @param who said it; plain text
   * @return the changed article
   * @throws Refused if one of them is empty
   */
  public Article quote(String words, String who) {
    String person = Given.text("speaker", who, "\"a lifter of the club\"");
    return with(new Part.Quote(prose("quote", words), person), List.of());
  }

  /**
   * A remark that stands out of the text.
   *
   * @param words Markdown
   * @param values one for each {@code {}}, in order
   * @return the changed article
   * @throws Refused as {@link #text}
   */
  public Article note(String words, Object... values) {
    return with(new Part.Note(prose("note", words, values)), values(values));
  }

  /**
   * A table with a numbered caption, as in {@code table(start.moments(), "Moments at the start")}.
   *
   * @param table a table, or a value that has one: a sweep, a verdict, people, a list of claims
   * @param caption Markdown
   * @param values one for each {@code {}} of the caption, in order
   * @return the changed article
   * @throws Refused if there is no such table, or it has no rows, or too many to read
   */
  public Article table(Object table, String caption, Object... values) {
    return tabled("", table, caption, values);
  }

  /**
   * The same, called by a name that texts can refer to: {@code table("moments", start.moments(),
   * "Moments at the start").text("{moments} says …")}.
   *
   * @param name letters, digits, blanks
   * @param table a table, or a value that has one
   * @param caption Markdown
   * @param values one for each {@code {}} of the caption, in order
   * @return the changed article
   * @throws Refused also if something else is called so
   */
  public Article table(String name, Object table, String caption, Object... values) {
    return tabled(free(name, "table"), table, caption, values);
  }

  /**
   * A picture with a numbered caption, as in {@code figure(start.picture(), "The arms")}.
   *
   * @param picture a picture, or a value that has one: a position, a sweep, a claim's answer
   * @param caption Markdown
   * @param values one for each {@code {}} of the caption, in order
   * @return the changed article
   * @throws Refused if there is no picture of it
   */
  public Article figure(Object picture, String caption, Object... values) {
    return pictured("", picture, caption, values);
  }

  /**
   * The same, called by a name that texts can refer to: {@code figure("arms", start.picture(), "The
   * arms").text("{arms} shows …")}.
   *
   * @param name letters, digits, blanks
   * @param picture a picture, or a value that has one
   * @param caption Markdown
   * @param values one for each {@code {}} of the caption, in order
   * @return the changed article
   * @throws Refused also if something else is called so
   */
  public Article figure(String name, Object picture, String caption, Object... values) {
    return pictured(free(name, "figure"), picture, caption, values);
  }

  /**
   * Names values that count for the method though they are not shown: a lift, people, a claim.
   *
   * @param values any
   * @return the changed article
   * @throws Refused if one is missing, or a method can tell nothing of it
   */
  public Article using(Object... values) {
    List<Object> more = new ArrayList<>();
    for (Object value : Ask.present("list of values", values, "pull, start")) {
      Ask.present("value", value, "pull");
      if (!Used.tells(value)) {
        throw new Refused(
            "A method can tell nothing of "
                + Kind.of(value)
                + ": name people, lifts, positions, movements, sweeps, comparisons, claims, doubts or"
                + " searches.");
      }
      more.add(value);
    }
    return new Article(title, author, parts, Given.joined(used, more), methods, labels);
  }

  /**
   * Puts the method here instead of at the end.
   *
   * @return the changed article
   */
  public Article method() {
    List<Part> others = parts.stream().filter(p -> !(p instanceof Part.MethodPlace)).toList();
    List<Part> changed = Given.joined(others, List.of(new Part.MethodPlace()));
    return new Article(title, author, changed, used, methods, labels);
  }

  /**
   * Puts the method here, with own sentences at its head.
   *
   * @param words Markdown
   * @param values one for each {@code {}}, in order
   * @return the changed article
   * @throws Refused as {@link #text}
   */
  public Article method(String words, Object... values) {
    List<Prose> more = Given.joined(methods, List.of(prose("method", words, values)));
    return new Article(title, author, parts, Given.joined(used, values(values)), more, labels)
        .method();
  }

  /**
   * Headings and the caution in one's own language; texts are anyway.
   *
   * @param language its tag, as in "de"
   * @param words as in {@code labelWords("german.txt")}, with lines such as {@code figure =
   *     Abbildung}
   * @return the changed article
   */
  public Article inWords(String language, LabelWords words) {
    String tag = Given.text("language", language, "\"de\"");
    if (Locale.forLanguageTag(tag).getLanguage().isEmpty()) {
      throw new Refused(
          "\"" + tag + "\" is no tag of a language: write \"de\", \"fr\", \"pt-BR\" or the like.");
    }
    Ask.present("words", words, "labelWords(\"german.txt\")");
    return new Article(title, author, parts, used, methods, new Labels(tag, words));
  }

  /**
   * The same from pairs of words.
   *
   * @param language its tag, as in "de"
   * @param words as in {@code Map.of("figure", "Abbildung", "table", "Tabelle")}
   * @return the changed article
   */
  public Article inWords(String language, Map<String, String> words) {
    return inWords(
        language, LabelWords.of(Ask.present("words", words, "Map.of(\"table\", \"…\")")));
  }

  /**
   * Saves the article: as a page that needs no other file, as Markdown with its pictures beside it,
   * or both.
   *
   * @param name {@code "hinge.html"}, {@code "hinge.md"}, or {@code "hinge"} for both
   * @return what was written
   * @throws Refused if a text refers to what is not there, the name has another ending, or the disk
   *     says no
   */
  public Saved save(String name) {
    FileName file = FileName.of(name);
    numbering().checked(texts());
    List<java.nio.file.Path> written = new ArrayList<>();
    if (file.page()) {
      written.add(OutputFolder.write(file.stem() + ".html", new ArticleHtml(this, true).page()));
    }
    if (file.markdown()) {
      written.addAll(new ArticleMarkdown(this).save(file.stem()));
    }
    return new Saved(written);
  }

  String title() {
    return title;
  }

  String author() {
    return author;
  }

  List<Part> parts() {
    return parts;
  }

  List<Prose> ownMethods() {
    return methods;
  }

  Labels labels() {
    return labels;
  }

  Numbering numbering() {
    return new Numbering(parts, labels);
  }

  Back back() {
    return Back.of(this, used);
  }

  /** Every text that may refer to a figure or table. */
  List<Prose> texts() {
    List<Prose> texts = new ArrayList<>(methods);
    parts.forEach(part -> part.prose().ifPresent(texts::add));
    return texts;
  }

  @Override
  public String text() {
    return Outline.of(this);
  }

  @Override
  public Optional<String> html() {
    return Optional.of(new ArticleHtml(this, false).fragment());
  }

  @Override
  public String toString() {
    return text();
  }

  private Article tabled(String name, Object table, String caption, Object... values) {
    Sheet sheet = Tables.of(Ask.present("table", table, "start.moments()"), MOST_ROWS);
    Part part = new Part.Tabled(name, sheet, prose("caption", caption, values));
    return with(part, Given.joined(values(values), List.of(table)));
  }

  private Article pictured(String name, Object value, String caption, Object... values) {
    Picture picture = PicturePage.pictureOf(Ask.present("picture", value, "start.picture()"));
    Part part = new Part.Pictured(name, picture, prose("caption", caption, values));
    return with(part, Given.joined(values(values), List.of(value)));
  }

  private Article with(Part part, List<Object> more) {
    List<Part> longer = Given.joined(parts, List.of(part));
    return new Article(title, author, longer, Given.joined(used, more), methods, labels);
  }

  private static Prose prose(String what, String words, Object... values) {
    return Prose.of(Given.text(what, words, "\"The bar hangs ahead of the hips.\""), values);
  }

  private static List<Object> values(Object... values) {
    return values == null ? List.of() : Arrays.asList(values);
  }

  /** A name that nothing here has yet. */
  private String free(String name, String what) {
    String asked = Given.text("name", name, "\"arms\"");
    if (!NAME.matcher(asked).matches()) {
      throw new Refused(
          "\""
              + asked
              + "\" cannot be the name of a "
              + what
              + ": take letters, digits and blanks, as in \"arms\".");
    }
    numbering()
        .called(asked)
        .ifPresent(
            place -> {
              throw new Refused(
                  place.word() + " is called \"" + asked + "\" already: give another name.");
            });
    return asked;
  }
}
