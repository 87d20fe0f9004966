package org.leverbook.language;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leverbook.display.Shown;

/**
 * The terms of the trade, each with its meaning.
 *
 * @param terms all of them, in the order of the alphabet
 */
public record Glossary(List<Term> terms) implements Shown {

  private static final int WIDTH = 78;

  /**
   * A term.
   *
   * @param name the usual name
   * @param others what else it is called
   * @param meaning one to three sentences
   * @param see names of related terms
   */
  public record Term(String name, List<String> others, String meaning, List<String> see)
      implements Shown {

    @Override
    public String text() {
      String called = others.isEmpty() ? "" : " (also: " + String.join(", ", others) + ")";
      String also = see.isEmpty() ? "" : "\n    see also: " + String.join(", ", see);
      return name + called + ": " + meaning + also;
    }

    @Override
    public String toString() {
      return text();
    }
  }

  /** Keeps its own copy. */
  public Glossary {
    terms = List.copyOf(terms);
  }

  /** Read once, when first asked for. */
  private static final class All {
    static final Map<String, Term> BY_NAME = read();

    private All() {}
  }

  private static Map<String, Term> read() {
    Map<String, Term> byName = new LinkedHashMap<>();
    for (String line : Entries.lines("glossary.txt")) {
      String[] cells = line.split(" \\| ", 3);
      List<String> names = List.of(cells[0].split("; "));
      List<String> others = names.subList(1, names.size());
      Term term = new Term(names.get(0), others, cells[1], List.of(cells[2].split(", ")));
      names.forEach(name -> byName.putIfAbsent(key(name), term));
    }
    return byName;
  }

  private static String key(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
  }

  /** All terms. */
  static Glossary all() {
    return new Glossary(
        All.BY_NAME.values().stream()
            .distinct()
            .sorted((a, b) -> a.name().compareToIgnoreCase(b.name()))
            .toList());
  }

  /** The term of this name, however it is spelt with capitals and hyphens; plurals too. */
  static Optional<Term> find(String name) {
    String key = key(name);
    Term found = All.BY_NAME.get(key);
    if (found == null && key.endsWith("s")) {
      found = All.BY_NAME.get(key.substring(0, key.length() - 1));
    }
    return Optional.ofNullable(found);
  }

  /** All names under which terms are known. */
  static List<String> names() {
    return List.copyOf(All.BY_NAME.keySet());
  }

  @Override
  public String text() {
    List<String> names = new ArrayList<>(terms.stream().map(Term::name).toList());
    return names.size()
        + " terms; help(\"moment arm\") tells what one means.\n"
        + Wrapped.text(names.stream().collect(Collectors.joining(", ")), WIDTH);
  }

  @Override
  public String toString() {
    return text();
  }
}
