package org.leverbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.leverbook.session.Belonging;
import org.leverbook.session.Session;

/** What the guide sees of an input: never its text, only what came of it. */
final class Sight {

  private final List<Object> shown;
  private final List<Object> made = new ArrayList<>();
  private final List<Object> had = new ArrayList<>();
  private final Entry entry;
  private int next;

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

  /**
   * Whether it gave a value of a kind, shown or held by a variable. Each value is found once, and
   * shown ones in their order: a picture does the step of the picture, not that of the plot too.
   */
  <T> boolean gave(Class<T> kind, Predicate<T> such) {
    for (int i = next; i < shown.size(); i++) {
      if (isOne(kind, such, shown.get(i))) {
        next = i + 1;
        return true;
      }
    }
    for (Object value : made) {
      if (isOne(kind, such, value)) {
        made.remove(value);
        return true;
      }
    }
    return false;
  }

  private static <T> boolean isOne(Class<T> kind, Predicate<T> such, Object value) {
    return kind.isInstance(value) && such.test(kind.cast(value));
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
