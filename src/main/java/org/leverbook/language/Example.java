package org.leverbook.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.leverbook.data.Nearest;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Refused;

/**
 * Ready code.
 *
 * @param name by which it is asked for
 * @param about what it shows
 * @param code lines that run in an empty session
 * @param offered whether it stands where the user types already
 */
public record Example(String name, String about, String code, boolean offered) implements Shown {

  private static final Pattern HEAD = Pattern.compile("\\[(.+?)\\] (.+)");

  /** All, in their order. */
  static List<Example> all() {
    List<Example> all = new ArrayList<>();
    List<String> code = new ArrayList<>();
    Matcher head = null;
    for (String line : Entries.lines("examples.txt")) {
      Matcher next = HEAD.matcher(line);
      if (next.matches()) {
        add(all, head, code);
        head = next;
      } else {
        code.add(line);
      }
    }
    add(all, head, code);
    return all;
  }

  private static void add(List<Example> all, Matcher head, List<String> code) {
    if (head != null) {
      all.add(new Example(head.group(1), head.group(2), String.join("\n", code), false));
    }
    code.clear();
  }

  static Optional<Example> find(String name) {
    return all().stream().filter(e -> e.name().equalsIgnoreCase(name.strip())).findFirst();
  }

  /** The example of this name. */
  static Example named(String name) {
    return find(name)
        .orElseThrow(
            () -> {
              List<String> names = all().stream().map(Example::name).toList();
              List<String> near = Nearest.of(name, names);
              return new Refused(
                  "There is no example \""
                      + name
                      + "\". "
                      + (near.isEmpty()
                          ? "examples() lists them."
                          : "Nearest: "
                              + String.join(", ", near)
                              + "; examples() lists them all."));
            });
  }

  /** The list. */
  static Sheet list() {
    return new Sheet(
        "Examples",
        List.of(Column.text("name"), Column.text("what it shows")),
        all().stream().map(e -> List.<Object>of(e.name(), e.about())).toList(),
        List.of("example(\"hinge\") gives the code of one."));
  }

  /** The same, as it stands where the user types. */
  Example inPlace() {
    return new Example(name, about, code, true);
  }

  @Override
  public String text() {
    return offered
        ? name + ": " + about + ". It stands at the prompt: Enter runs it."
        : "// " + about + "\n" + code;
  }

  @Override
  public Optional<String> html() {
    String escaped = text().replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    return Optional.of(
        escaped.lines().collect(Collectors.joining("\n", "<pre><code>", "</code></pre>")));
  }

  @Override
  public String toString() {
    return text();
  }
}
