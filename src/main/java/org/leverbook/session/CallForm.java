package org.leverbook.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One way in which a word can be called.
 *
 * @param parameters what it takes, in order
 * @param many whether the last may be given several times, or not at all
 */
record CallForm(List<Parameter> parameters, boolean many) {

  /**
   * What a call takes at one place.
   *
   * @param type as the compiler names it
   * @param name as its author named it
   */
  record Parameter(String type, String name) {

    /** What is needed, and its name where that tells more than the kind. */
    String said(String kind) {
      String as = Kinds.words(name);
      boolean tells =
          as.length() > 2 && !kind.contains(as) && !as.matches("arg ?\\d+|first|others");
      return tells ? kind + " (" + as + ")" : kind;
    }
  }

  /** Reads a signature, as in {@code Person Vocabulary.person(Sex sex, Quantity<Mass> mass)}. */
  static Optional<CallForm> of(String signature) {
    int close = signature.lastIndexOf(')');
    int open = signature.indexOf('(');
    if (open < 0 || close < open) {
      return Optional.empty();
    }
    List<Parameter> parameters = new ArrayList<>();
    String inside = signature.substring(open + 1, close);
    for (String each : Kinds.cut(inside)) {
      int blank = each.lastIndexOf(' ');
      boolean named = blank > 0 && each.substring(blank + 1).matches("[\\p{L}_$][\\p{L}\\p{N}_$]*");
      String type = named ? each.substring(0, blank) : each;
      parameters.add(new Parameter(Kinds.plain(type), named ? each.substring(blank + 1) : ""));
    }
    return Optional.of(new CallForm(List.copyOf(parameters), inside.contains("...")));
  }

  /** The parameter that an argument is given for; empty where there is none left. */
  Optional<Parameter> at(int index) {
    if (index < parameters.size()) {
      return Optional.of(parameters.get(index));
    }
    return many ? Optional.of(parameters.get(parameters.size() - 1)) : Optional.empty();
  }

  /** What a parameter is for: among several its name helps. */
  String said(Parameter parameter) {
    String kind = Kinds.a(parameter.type());
    return parameters.size() > 1 ? parameter.said(kind) : kind;
  }

  /** Whether so many arguments can be given. */
  boolean takes(int count) {
    return many ? count >= parameters.size() - 1 : count == parameters.size();
  }

  /** What it takes, in words. */
  String said() {
    return parameters.isEmpty()
        ? "nothing"
        : parameters.stream()
            .map(p -> Kinds.a(p.type()))
            .collect(Collectors.joining(", "))
            .concat(many ? " and more of them" : "");
  }
}
