package org.leverbook.session;

import java.lang.reflect.Method;
import java.lang.reflect.Type;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Finds the names that a text itself declares and that can be used at its end. */
final class Locals {

  private final List<Token> tokens;
  private final Expressions expressions;
  private final Chains chains;
  private final Scope scope;
  private final Deque<Frame> frames = new ArrayDeque<>();
  private Map<String, Supplier<Optional<Type>>> pending = new HashMap<>();

  /** What is declared between an opening bracket and its end. */
  private static final class Frame {
    final int open;
    final Map<String, Supplier<Optional<Type>>> names = new HashMap<>();
    final Set<String> ofLambda = new HashSet<>();
    int argument;
    int argumentStart;

    Frame(int open) {
      this.open = open;
      this.argumentStart = open + 1;
    }
  }

  Locals(Expressions expressions, Chains chains, Scope scope) {
    this.tokens = expressions.tokens();
    this.expressions = expressions;
    this.chains = chains;
    this.scope = scope;
  }

  /** Puts the names into the scope. */
  void find() {
    frames.push(new Frame(-1));
    for (int i = 0; i < tokens.size(); i++) {
      read(i);
    }
    List<Frame> outermostFirst = new ArrayList<>(frames);
    java.util.Collections.reverse(outermostFirst);
    outermostFirst.forEach(frame -> frame.names.forEach(scope::add));
    pending.forEach(scope::add);
  }

  private void read(int i) {
    Token token = tokens.get(i);
    if (token.is("(") || token.is("[") || token.is("{")) {
      Frame frame = new Frame(i);
      if (token.is("{")) {
        frame.names.putAll(pending);
        pending = new HashMap<>();
      }
      frames.push(frame);
    } else if (token.is(")") || token.is("]") || token.is("}")) {
      closed(token);
    } else if (token.is(",")) {
      Frame frame = frames.peek();
      frame.ofLambda.forEach(frame.names::remove);
      frame.ofLambda.clear();
      frame.argument++;
      frame.argumentStart = i + 1;
    } else if (token.is("->")) {
      lambda(i);
    } else if (token.is(";") || token.kind() == Token.Kind.BREAK) {
      pending = new HashMap<>();
    } else if (token.isName()) {
      declaration(i);
    }
  }

  private void closed(Token closer) {
    if (frames.size() > 1) {
      Frame frame = frames.pop();
      // What stands in the brackets of a method, a loop or a catch is meant for what follows.
      if (closer.is(")")) {
        frame.ofLambda.forEach(frame.names::remove);
        pending.putAll(frame.names);
      }
    }
  }

  private void declaration(int i) {
    boolean member = i > 0 && (tokens.get(i - 1).is(".") || tokens.get(i - 1).isWord("new"));
    if (member) {
      return;
    }
    if (tokens.get(i).isWord("var")) {
      if (i + 2 < tokens.size() && tokens.get(i + 1).isName()) {
        add(tokens.get(i + 1).text(), i + 2, Optional.empty());
      }
      return;
    }
    char first = tokens.get(i).text().charAt(0);
    boolean primitive = Set.of("int", "double", "long", "boolean").contains(tokens.get(i).text());
    if (!Character.isUpperCase(first) && !primitive) {
      return;
    }
    KnownTypes.Reading reading = scope.types().reading(tokens, i);
    Optional<Type> type = reading.type();
    int name = reading.end();
    if (type.isPresent() && name > i && name + 1 < tokens.size() && tokens.get(name).isName()) {
      add(tokens.get(name).text(), name + 1, type);
    }
  }

  private void add(String name, int behind, Optional<Type> type) {
    if (behind >= tokens.size()) {
      return;
    }
    Token next = tokens.get(behind);
    Supplier<Optional<Type>> finder;
    if (type.isPresent()) {
      boolean declares =
          next.is("=")
              || next.is(";")
              || next.is(":")
              || next.is(",")
              || next.is(")")
              || next.kind() == Token.Kind.BREAK;
      if (!declares) {
        return;
      }
      finder = () -> type;
    } else if (next.is("=")) {
      finder = () -> expressions.typeFrom(behind + 1);
    } else if (next.is(":")) {
      finder = () -> expressions.typeFrom(behind + 1).flatMap(Types::element);
    } else {
      return;
    }
    frames.peek().names.put(name, finder);
  }

  /** The names that a lambda gives to what it takes, from the call that it is an argument of. */
  private void lambda(int arrow) {
    Frame frame = frames.peek();
    List<String> names =
        expressions.calls().lambdaNames(new int[] {frame.argumentStart, tokens.size()});
    int open = frame.open;
    int argument = frame.argument;
    int start = frame.argumentStart;
    // What is declared in brackets before the arrow was taken for names of the next block.
    names.forEach(pending::remove);
    for (int i = 0; i < names.size(); i++) {
      int which = i;
      frame.names.put(names.get(i), () -> taken(open, argument, start, which));
      frame.ofLambda.add(names.get(i));
    }
  }

  private Optional<Type> taken(int open, int argument, int start, int which) {
    for (Type wanted : chains.wantedAt(open, argument, start)) {
      Optional<Method> method = Types.lambda(wanted);
      if (method.isPresent()) {
        List<Type> takes = Types.lambdaTakes(wanted, method.get());
        if (which < takes.size() && !Types.saysNothing(takes.get(which))) {
          return Optional.of(Types.bound(takes.get(which)));
        }
      }
    }
    return Optional.empty();
  }
}
