package org.leverbook.session;

import java.lang.reflect.Type;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where chains of calls begin, what they are called on, and what a place in a call wants. */
final class Chains {

  private static final Set<String> NO_CALLS =
      Set.of("if", "for", "while", "switch", "catch", "try", "synchronized", "return", "assert");

  private final List<Token> tokens;
  private final Expressions expressions;
  private final Scope scope;

  Chains(Expressions expressions, Scope scope) {
    this.tokens = expressions.tokens();
    this.expressions = expressions;
    this.scope = scope;
  }

  /**
   * Where the chain begins whose last piece is given: {@code hinge} of {@code hinge(a).start()}.
   *
   * @param last the last piece
   * @return the first piece
   */
  int start(int last) {
    int at = last;
    while (at >= 0) {
      Token token = tokens.get(at);
      while (at > 0 && (token.is(")") || token.is("]"))) {
        at = opener(at);
        boolean call = at > 0 && (tokens.get(at - 1).isName() || tokens.get(at - 1).is("]"));
        boolean typed = at > 0 && tokens.get(at).is("(") && tokens.get(at - 1).is(">");
        if (typed) {
          at = angle(at - 1);
          call = at > 0 && tokens.get(at - 1).isName();
        }
        boolean keyword = at > 0 && NO_CALLS.contains(tokens.get(at - 1).text());
        if (!call || keyword) {
          return at;
        }
        at--;
        token = tokens.get(at);
      }
      if (at > 0 && tokens.get(at - 1).isWord("new")) {
        at--;
      }
      if (at < 2 || !tokens.get(at - 1).is(".")) {
        return Math.max(0, at);
      }
      at -= 2;
    }
    return 0;
  }

  private int opener(int close) {
    int nested = 0;
    for (int i = close; i >= 0; i--) {
      Token each = tokens.get(i);
      if (each.is(")") || each.is("]") || each.is("}")) {
        nested++;
      } else if (each.is("(") || each.is("[") || each.is("{")) {
        nested--;
        if (nested == 0) {
          return i;
        }
      }
    }
    return 0;
  }

  private int angle(int close) {
    int nested = 0;
    for (int i = close; i >= 0; i--) {
      nested += tokens.get(i).is(">") ? 1 : tokens.get(i).is("<") ? -1 : 0;
      if (nested == 0) {
        return i;
      }
    }
    return 0;
  }

  /** What the chain means that ends with a piece. */
  Optional<Meaning> meaning(int last) {
    return last < 0 ? Optional.empty() : expressions.meaningOf(start(last), last + 1);
  }

  /** Whether the bracket that opens at a place is that of a call. */
  boolean isCall(int open) {
    return open > 0
        && tokens.get(open).is("(")
        && (tokens.get(open - 1).isName() || tokens.get(open - 1).is(">"))
        && !NO_CALLS.contains(tokens.get(open - 1).text())
        && !tokens.get(open - 1).isWord("new")
        && !isDeclared(open - 1);
  }

  /** Whether a type stands before a name: a method is declared there, not called. */
  private boolean isDeclared(int name) {
    if (name < 1) {
      return false;
    }
    Token before = tokens.get(name - 1);
    return before.is("]") || before.isName() && !Keywords.LEADS_ON.contains(before.text());
  }

  /** The forms of the call whose bracket opens at a place; empty where they are not known. */
  List<Form> forms(int open) {
    if (!isCall(open)) {
      return List.of();
    }
    int name = tokens.get(open - 1).is(">") ? angle(open - 1) - 1 : open - 1;
    if (name < 0 || !tokens.get(name).isName()) {
      return List.of();
    }
    int begin = name;
    while (begin >= 2 && tokens.get(begin - 1).is(".") && tokens.get(begin - 2).isName()) {
      begin -= 2;
    }
    if (begin > 0 && tokens.get(begin - 1).isWord("new")) {
      return scope
          .types()
          .reading(tokens, begin)
          .type()
          .map(Types::raw)
          .map(Forms::makers)
          .orElse(List.of());
    }
    String called = tokens.get(name).text();
    if (name > 0 && tokens.get(name - 1).is(".")) {
      return meaning(name - 2).map(of -> expressions.calls().ofValue(of, called)).orElse(List.of());
    }
    return scope.forms(called);
  }

  /** The whole arguments of a call before the one that begins at a place. */
  List<int[]> before(int open, int argument, int start) {
    List<int[]> all = expressions.arguments(open, Math.max(open + 1, start - 1));
    return all.subList(0, Math.min(argument, all.size()));
  }

  /** The types that a call wants as one of its arguments. */
  List<Type> wantedAt(int open, int argument, int start) {
    if (open < 0) {
      return List.of();
    }
    List<Form> forms = forms(open);
    return forms.isEmpty()
        ? List.of()
        : expressions.calls().wanted(forms, before(open, argument, start));
  }
}
