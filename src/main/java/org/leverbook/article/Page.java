package org.leverbook.article;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * The frame of a page for reading: one document that needs no network, no other file and no script;
 * well-formed, so that XML readers take it too. It reads on a phone, in the dark, and on paper.
 *
 * <p>Classes of its style sheet: {@code picture} around a picture, {@code scroll} around what may
 * be wider than a phone, {@code notes}, {@code quiet}, {@code right} for cells of numbers, {@code
 * caution} for the caution.
 *
 * @param title of the page, plain text
 * @param language of its words, as in "en"
 * @param description in one or two sentences, plain text; may be empty
 */
public record Page(String title, String language, String description) {

  private static final String STYLE = resource("page.css");

  /** Nothing may be missing. */
  public Page {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(language, "language");
    Objects.requireNonNull(description, "description");
  }

  /**
   * A page in English.
   *
   * @param title plain text
   * @return the frame, without a description
   */
  public static Page of(String title) {
    return new Page(title, "en", "");
  }

  /**
   * Says what the page is about, for those who search or listen.
   *
   * @param sentences plain text
   * @return the changed frame
   */
  public Page describedAs(String sentences) {
    return new Page(title, language, sentences);
  }

  /**
   * Another language.
   *
   * @param tag of the language, as in "de" (BCP 47)
   * @return the changed frame
   */
  public Page inLanguage(String tag) {
    return new Page(title, tag, description);
  }

  /**
   * The whole document.
   *
   * @param content well-formed HTML: void elements closed, texts {@link #escaped}
   * @return the document, its last line ended
   */
  public String around(String content) {
    return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\""
        + escaped(language)
        + "\">\n<head>\n<meta charset=\"utf-8\"/>\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
        + "<meta name=\"color-scheme\" content=\"light dark\"/>\n"
        + (description.isEmpty()
            ? ""
            : "<meta name=\"description\" content=\"" + escaped(description) + "\"/>\n")
        + "<title>"
        + escaped(title)
        + "</title>\n<style>\n"
        + STYLE
        + "</style>\n</head>\n<body>\n<main>\n"
        + content
        + (content.endsWith("\n") ? "" : "\n")
        + "</main>\n</body>\n</html>\n";
  }

  /**
   * Text made safe for HTML and XML, also inside an attribute in double quotes; characters that XML
   * cannot hold become spaces, line breaks and tabs stay.
   *
   * @param text any
   * @return the text with its marks escaped
   */
  public static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(allowed(c) ? c : ' ');
              }
            });
    return safe.toString();
  }

  /** Whether XML 1.0 can hold a character (section 2.2). */
  private static boolean allowed(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || c >= 0x20 && c <= 0xD7FF
        || c >= 0xE000 && c <= 0xFFFD
        || c >= 0x10000;
  }

  private static String resource(String name) {
    try (InputStream in = Page.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
