package org.leverbook.session;

import java.lang.reflect.Field;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the types of expressions from their text, by reflection.
 *
 * <p>The compiler could tell them too, but each question costs it ten milliseconds, it cannot speak
 * of lines that are not evaluated yet, and a line that is being typed is rarely whole. What is not
 * understood here has no type; the compiler is asked then.
 */
final class Expressions {

  private static final Set<String> ARITHMETIC = Set.of("+", "-", "*", "/", "%");
  private static final Set<String> LOGIC = Set.of("==", "!=", "<", ">", "<=", ">=", "&&", "||");

  /** Deeper than this nobody nests; it ends what would turn in a circle. */
  private static final int DEEPEST = 60;

  private final List<Token> tokens;
  private final Scope scope;
  private final Calls calls;
  private int depth;

  Expressions(List<Token> tokens, Scope scope, Forms forms) {
    this.tokens = tokens;
    this.scope = scope;
    this.calls = new Calls(this, scope, forms);
  }

  List<Token> tokens() {
    return tokens;
  }

  Calls calls() {
    return calls;
  }

  /** The type of the expression that fills a stretch of the text. */
  Optional<Type> typeOf(int from, int to) {
    return meaningOf(from, to).filter(m -> !m.namesType()).map(Meaning::type);
  }

  /** What the expression means that fills a stretch of the text. */
  Optional<Meaning> meaningOf(int from, int to) {
    if (from >= to || depth > DEEPEST) {
      return Optional.empty();
    }
    depth++;
    try {
      Reading reading = new Reading(from, to);
      Optional<Meaning> meaning = reading.whole();
      return reading.at == to ? meaning : Optional.empty();
    } finally {
      depth--;
    }
  }

  /** The type of the expression that begins at a place and ends where it ends. */
  Optional<Type> typeFrom(int from) {
    if (depth > DEEPEST) {
      return Optional.empty();
    }
    depth++;
    try {
      return new Reading(from, tokens.size())
          .whole()
          .filter(m -> !m.namesType())
          .map(Meaning::type);
    } finally {
      depth--;
    }
  }

  /** The closing bracket of an opening one; the end of the text where it is still open. */
  int closer(int open) {
    int nested = 0;
    for (int i = open; i < tokens.size(); i++) {
      Token each = tokens.get(i);
      if (each.is("(") || each.is("[") || each.is("{")) {
        nested++;
      } else if (each.is(")") || each.is("]") || each.is("}")) {
        nested--;
        if (nested == 0) {
          return i;
        }
      }
    }
    return tokens.size();
  }

  /** The stretches between the commas inside a bracket. */
  List<int[]> arguments(int open, int close) {
    List<int[]> found = new ArrayList<>();
    int from = open + 1;
    int i = from;
    while (i < close) {
      Token each = tokens.get(i);
      if (each.is("(") || each.is("[") || each.is("{")) {
        i = closer(i);
      } else if (each.is(",")) {
        found.add(new int[] {from, i});
        from = i + 1;
      }
      i++;
    }
    if (from < close || !found.isEmpty()) {
      found.add(new int[] {from, close});
    }
    return found;
  }

  /** Reads one expression. */
  private final class Reading {

    private final int to;
    private int at;

    Reading(int from, int to) {
      this.at = from;
      this.to = to;
    }

    private boolean sees(String sign) {
      return at < to && tokens.get(at).is(sign);
    }

    private Optional<Meaning> whole() {
      Optional<Meaning> left = operand();
      while (at < to && tokens.get(at).kind() == Token.Kind.SIGN) {
        String sign = tokens.get(at).text();
        if (sign.equals("?")) {
          at++;
          Optional<Meaning> first = whole();
          if (!sees(":")) {
            return first;
          }
          at++;
          Optional<Meaning> second = whole();
          return first.isPresent() ? first : second;
        }
        if (!ARITHMETIC.contains(sign) && !LOGIC.contains(sign)) {
          break;
        }
        at++;
        Optional<Meaning> right = operand();
        left = LOGIC.contains(sign) ? value(boolean.class) : sum(left, right);
      }
      if (at < to && tokens.get(at).isWord("instanceof")) {
        at = to;
        return value(boolean.class);
      }
      return left;
    }

    private Optional<Meaning> sum(Optional<Meaning> one, Optional<Meaning> other) {
      if (isText(one) || isText(other)) {
        return value(String.class);
      }
      if (one.isEmpty() || other.isEmpty()) {
        return Optional.empty();
      }
      for (Class<?> each : List.of(double.class, float.class, long.class, int.class)) {
        boolean is = Types.wrapped(one.get().type()) == Types.wrapped(each);
        if (is || Types.wrapped(other.get().type()) == Types.wrapped(each)) {
          return value(each);
        }
      }
      return Optional.empty();
    }

    private boolean isText(Optional<Meaning> meaning) {
      return meaning.filter(m -> m.type() == String.class).isPresent();
    }

    private Optional<Meaning> operand() {
      if (sees("-") || sees("+") || sees("++") || sees("--")) {
        at++;
        return operand();
      }
      if (sees("!")) {
        at++;
        operand();
        return value(boolean.class);
      }
      Optional<Meaning> found = primary();
      while (at < to) {
        if (sees(".") && at + 1 < to) {
          at++;
          found = step(found);
        } else if (sees("[")) {
          at = Math.min(closer(at) + 1, to);
          found = found.flatMap(m -> Types.element(m.type())).map(Meaning::value);
        } else if (sees("++") || sees("--")) {
          at++;
        } else if (sees("::")) {
          at = Math.min(at + 2, to);
          return Optional.empty();
        } else {
          break;
        }
      }
      return found;
    }

    private Optional<Meaning> step(Optional<Meaning> of) {
      if (sees("<")) {
        while (at < to && !sees(">")) {
          at++;
        }
        at++;
      }
      if (at >= to || !tokens.get(at).isName()) {
        at = Math.min(at + 1, to);
        return Optional.empty();
      }
      String name = tokens.get(at++).text();
      if (sees("(")) {
        return called(of.map(m -> calls.ofValue(m, name)).orElse(List.of()));
      }
      return of.flatMap(m -> calls.field(m, name));
    }

    private Optional<Meaning> called(List<Form> forms) {
      int open = at;
      int close = Math.min(closer(open), to);
      at = Math.min(close + 1, to);
      return calls.given(forms, arguments(open, close)).map(Meaning::value);
    }

    private Optional<Meaning> primary() {
      if (at >= to) {
        return Optional.empty();
      }
      Token token = tokens.get(at);
      switch (token.kind()) {
        case NUMBER:
          at++;
          return value(number(token.text()));
        case STRING:
          at++;
          return value(String.class);
        case CHARACTER:
          at++;
          return value(char.class);
        case NAME:
          return name(token.text());
        default:
          return token.is("(") ? bracketed() : nothing();
      }
    }

    private Optional<Meaning> nothing() {
      at = to;
      return Optional.empty();
    }

    private Optional<Meaning> bracketed() {
      int open = at;
      int close = closer(open);
      if (close + 1 < to && tokens.get(close + 1).is("->")) {
        return nothing();
      }
      at = Math.min(close + 1, to);
      Optional<Meaning> inner = meaningOf(open + 1, Math.min(close, to));
      boolean operandFollows = at < to && tokens.get(at).kind() != Token.Kind.SIGN || sees("(");
      KnownTypes.Reading type = scope.types().reading(tokens, open + 1);
      Optional<Type> cast = type.type().filter(t -> type.end() == close);
      if (operandFollows && cast.isPresent()) {
        operand();
        return cast.map(Meaning::value);
      }
      return inner;
    }

    private Optional<Meaning> name(String word) {
      if (at + 1 < to && tokens.get(at + 1).is("->")) {
        return nothing();
      }
      at++;
      switch (word) {
        case "true", "false":
          return value(boolean.class);
        case "new":
          return made();
        case "switch", "null", "this", "super":
          return nothing();
        default:
          if (sees("(")) {
            return called(scope.forms(word));
          }
          return scope.meaning(word);
      }
    }

    private Optional<Meaning> made() {
      KnownTypes.Reading type = scope.types().reading(tokens, at);
      Optional<Type> made = type.type();
      at = Math.min(type.end(), to);
      if (sees("<") && at + 1 < to && tokens.get(at + 1).is(">")) {
        at += 2;
      }
      if (sees("[")) {
        while (sees("[")) {
          at = Math.min(closer(at) + 1, to);
        }
        return Optional.empty();
      }
      if (sees("(")) {
        at = Math.min(closer(at) + 1, to);
      }
      if (sees("{")) {
        at = Math.min(closer(at) + 1, to);
      }
      return made.map(Meaning::value);
    }

    private Class<?> number(String written) {
      char last = Character.toLowerCase(written.charAt(written.length() - 1));
      boolean hex = written.startsWith("0x") || written.startsWith("0X");
      if (last == 'l') {
        return long.class;
      }
      if (hex) {
        return int.class;
      }
      if (last == 'f') {
        return float.class;
      }
      return written.matches(".*[.eEdD].*") ? double.class : int.class;
    }
  }

  private static Optional<Meaning> value(Type type) {
    return Optional.of(Meaning.value(type));
  }

  /** The field of a class, static or not. */
  static Optional<Field> field(Class<?> of, String name) {
    return Forms.fields(of).stream().filter(field -> field.getName().equals(name)).findFirst();
  }
}
