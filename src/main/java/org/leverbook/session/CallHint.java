package org.leverbook.session;

import java.util.List;
import java.util.Optional;

/**
 * What the call that a place stands in takes.
 *
 * @param forms the ways to call it, those first that fit the arguments so far, one line each, as in
 *     {@code person(sex: MALE or FEMALE, mass, stature: length): person}
 * @param parameter which parameter the place belongs to, from 0
 */
public record CallHint(List<String> forms, int parameter) {

  /** Keeps its own copy of the list. */
  public CallHint {
    forms = List.copyOf(forms);
  }

  /**
   * A stretch of a line.
   *
   * @param from its first character
   * @param to behind its last one
   */
  public record Stretch(int from, int to) {}

  /**
   * Where a form speaks of the parameter that the place belongs to.
   *
   * @param form which form, from 0
   * @return the stretch of its line; empty where the form has no such parameter
   */
  public Optional<Stretch> marked(int form) {
    String line = forms.get(form);
    int depth = 0;
    int count = 0;
    int from = line.indexOf('(') + 1;
    Stretch last = null;
    for (int i = from; i < line.length(); i++) {
      char c = line.charAt(i);
      boolean ends = depth == 0 && (c == ',' || c == ')');
      if (ends) {
        Stretch each = new Stretch(from, i);
        boolean more = line.substring(from, i).strip().equals("…");
        if (more && last != null) {
          return Optional.of(last);
        }
        if (count == parameter && i > from) {
          return Optional.of(each);
        }
        if (c == ')') {
          return Optional.empty();
        }
        last = each;
        count++;
        from = i + 2;
      }
      // The arrow of a lambda's shape is no bracket.
      depth += "([<{".indexOf(c) >= 0 ? 1 : c == '>' && line.charAt(i - 1) == '-' ? 0 : 0;
      depth -= ")]}".indexOf(c) >= 0 ? 1 : 0;
    }
    return Optional.empty();
  }
}
