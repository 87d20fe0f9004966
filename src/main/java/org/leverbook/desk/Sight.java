package org.leverbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.leverbook.session.Belonging;
import org.leverbook.session.Session;

/** What the guide sees of an input: never its text, only what came of it. */
final class Sight {

  private final List<Object> shown;
  private final List<Object> made = new ArrayList<>();
  private final List<Object> had = new ArrayList<>();
  private final Entry entry;

  /** What an input showed, and what its variables hold now. */
  Sight(List<Object> shown, Entry entry, Session session) {
    this.shown = shown;
    this.entry = entry;
    Set<String> touched = new TreeSet<>();
    entry.done().forEach(piece -> touched.addAll(piece.change().variables()));
    if (touched.isEmpty() && shown.isEmpty()) {
      return;
    }
    for (Belonging one : session.belongings()) {
      if (one.value() != null) {
        (touched.contains(one.name()) ? made : had).add(one.value());
      }
    }
  }

  /** Whether it was only about the session, such as asking for help. */
  boolean aside() {
    return entry.aside();
  }

  /** Whether it gave a value of a kind, shown or held by a variable. */
  <T> boolean gave(Class<T> kind, Predicate<T> such) {
    return Stream.concat(shown.stream(), made.stream())
        .filter(kind::isInstance)
        .map(kind::cast)
        .anyMatch(such);
  }

  boolean gave(Class<?> kind) {
    return gave(kind, value -> true);
  }

  /** Whether another variable holds a value of a kind since an earlier input. */
  <T> boolean had(Class<T> kind, Predicate<T> such) {
    return had.stream().filter(kind::isInstance).map(kind::cast).anyMatch(such);
  }

  /** Whether it wrote a file of this ending. */
  boolean wrote(String ending) {
    return entry.files().stream().anyMatch(file -> file.toString().endsWith(ending));
  }
}
