package org.leverbook.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What a piece changed among the user's declarations, and how it was before. */
public final class Change {

  /**
   * A declaration that came or took the place of another.
   *
   * @param key what it is known by
   * @param before what was there, with the value it held
   * @param after what is there since
   */
  record Declared(String key, Optional<Held> before, Object value, Held after) {}

  /** Nothing changed. */
  public static final Change NONE = new Change(null, List.of(), Map.of());

  private final Belongings owner;
  private final List<Declared> declared;
  private final Map<String, Object> assigned;

  Change(Belongings owner, List<Declared> declared, Map<String, Object> assigned) {
    this.owner = owner;
    this.declared = List.copyOf(declared);
    this.assigned = assigned;
  }

  Belongings owner() {
    return owner;
  }

  List<Declared> declared() {
    return declared;
  }

  /** The values that variables held before, by name. */
  Map<String, Object> assigned() {
    return assigned;
  }

  /** The same without the values that were assigned. */
  Change declarationsOnly() {
    return declared.isEmpty() ? NONE : new Change(owner, declared, Map.of());
  }

  /**
   * The names that it declared.
   *
   * @return in their order; methods with their brackets
   */
  public List<String> names() {
    return declared.stream().map(d -> d.after().label()).toList();
  }

  /**
   * The names of the variables that it declared or to which it gave another value.
   *
   * @return each once
   */
  public Set<String> variables() {
    Set<String> names = new TreeSet<>(assigned.keySet());
    declared.stream()
        .filter(d -> d.after().kind() == Belonging.Kind.VARIABLE)
        .forEach(d -> names.add(d.after().name()));
    return names;
  }

  /**
   * Whether nothing changed.
   *
   * @return true if so
   */
  public boolean isNone() {
    return declared.isEmpty() && assigned.isEmpty();
  }
}
