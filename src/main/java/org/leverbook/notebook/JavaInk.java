package org.leverbook.notebook;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Java as HTML, with its comments, texts, numbers and keywords marked. */
final class JavaInk {

  private static final Pattern PARTS =
      Pattern.compile(
          "(?<comment>//[^\n]*|/\\*(?s:.*?)(?:\\*/|\\z))"
              + "|(?<text>\"\"\"(?s:.*?)(?:\"\"\"|\\z)|\"(?:[^\"\\\\\n]|\\\\.)*\"?|'(?:[^'\\\\\n]|\\\\.)*'?)"
              + "|(?<word>\\b(?:abstract|boolean|break|byte|case|catch|char|class|continue|default|do"
              + "|double|else|enum|extends|false|final|finally|float|for|if|implements|import"
              + "|instanceof|int|interface|long|new|null|private|protected|public|record|return"
              + "|short|static|switch|this|throw|true|try|var|void|while|yield)\\b)"
              + "|(?<number>\\b\\d[\\w.]*)");

  private JavaInk() {}

  static String html(String code) {
    StringBuilder html = new StringBuilder();
    Matcher part = PARTS.matcher(code);
    int from = 0;
    while (part.find()) {
      html.append(Escaped.html(code.substring(from, part.start())));
      String kind =
          part.group("comment") != null
              ? "comment"
              : part.group("text") != null
                  ? "text"
                  : part.group("word") != null ? "word" : "number";
      html.append("<span class=\"").append(kind).append("\">");
      html.append(Escaped.html(part.group())).append("</span>");
      from = part.end();
    }
    return html.append(Escaped.html(code.substring(from))).toString();
  }
}
