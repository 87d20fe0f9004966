package org.leverbook.abuse;

import java.util.List;

/** Texts that no one means, among some that are meant. */
final class OddTexts {

  static final List<String> ALL =
      List.of(
          "",
          " ",
          "\n",
          "\t",
          "hip height",
          "bar mass",
          "HIP",
          "hinge",
          "backSquat",
          "moment",
          "club.csv",
          "table.json",
          "picture.png",
          "picture.svg",
          "page.html",
          "page.md",
          "lesson.jsh",
          "no such thing",
          "a,b",
          "\"",
          "\"a\"\"b",
          "../up.csv",
          "/",
          ".",
          "..",
          "con.csv",
          "\u0000",
          "a\u0000b.csv",
          "é ü ß",
          "膝",
          "🏋",
          "\ud800",
          "<b>&amp;</b>",
          "<script>",
          "%s %n %d",
          "${x}",
          "{0}",
          "\\",
          "(",
          "[",
          "*",
          "(?<a",
          "a:b|c?d*",
          "x".repeat(300),
          "lang ".repeat(4000),
          "1e309",
          "-1",
          "12.5",
          "lifter A",
          "quadriceps",
          "floor",
          "N·m",
          "cm",
          "%",
          "x.csv.tmp",
          "a/b/c.csv");

  private OddTexts() {}
}
