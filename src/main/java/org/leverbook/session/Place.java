package org.leverbook.session;

import java.lang.reflect.Method;
import java.lang.reflect.Type;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * A place in a text: what is being typed there, on what it is asked, and what is wanted.
 *
 * <p>The brackets, arguments and names around it are read once, when it is made.
 */
final class Place {

  private final Tokens text;
  private final List<Token> tokens;
  private final Scope scope;
  private final Expressions expressions;
  private final Chains chains;
  private final Optional<Token> begun;

  /** The bracket that is open, the argument in which the place stands, and where that begins. */
  record Open(int bracket, int argument, int start) {}

  private final Deque<Open> open = new ArrayDeque<>();

  /**
   * A place.
   *
   * @param source the text
   * @param cursor the place, in UTF-16 units
   * @param scope the session's names
   * @param forms what can be asked of types
   */
  Place(String source, int cursor, Scope scope, Forms forms) {
    this.text = Tokens.of(source, cursor);
    List<Token> all = text.list();
    Token last = all.isEmpty() ? null : all.get(all.size() - 1);
    boolean typing = last != null && last.isName() && last.end() == cursor;
    this.begun = typing ? Optional.of(last) : Optional.empty();
    this.tokens = typing ? all.subList(0, all.size() - 1) : all;
    this.scope = scope;
    this.expressions = new Expressions(tokens, scope, forms);
    this.chains = new Chains(expressions, scope);
    new Locals(expressions, chains, scope).find();
    readBrackets();
  }

  private void readBrackets() {
    for (int i = 0; i < tokens.size(); i++) {
      Token each = tokens.get(i);
      if (each.is("(") || each.is("[") || each.is("{")) {
        open.push(new Open(i, 0, i + 1));
      } else if ((each.is(")") || each.is("]") || each.is("}")) && !open.isEmpty()) {
        open.pop();
      } else if (each.is(",") && !open.isEmpty()) {
        Open now = open.pop();
        open.push(new Open(now.bracket(), now.argument() + 1, i + 1));
      }
    }
  }

  Tokens.In in() {
    return text.in();
  }

  /** Where the quoted text begins in which the place stands. */
  int quote() {
    return text.quote();
  }

  /** What is typed so far of a word; empty where none is begun. */
  String prefix() {
    return begun.map(Token::text).orElse("");
  }

  /** Where the word begins that is being typed. */
  int from(int cursor) {
    return begun.map(Token::start).orElse(cursor);
  }

  Scope scope() {
    return scope;
  }

  Chains chains() {
    return chains;
  }

  Expressions expressions() {
    return expressions;
  }

  /** The piece so many places before the word that is being typed. */
  Optional<Token> back(int places) {
    int at = tokens.size() - places;
    return at >= 0 && at < tokens.size() ? Optional.of(tokens.get(at)) : Optional.empty();
  }

  int size() {
    return tokens.size();
  }

  private boolean behind(String sign) {
    return back(1).filter(token -> token.is(sign)).isPresent();
  }

  /** Whether a step is asked of a value or a type. */
  boolean isStep() {
    return behind(".");
  }

  /** What a step is asked of. */
  Optional<Meaning> receiver() {
    return chains.meaning(tokens.size() - 2);
  }

  /** Whether this is the beginning of a statement. */
  boolean isStatement() {
    return back(1)
        .map(
            token ->
                token.kind() == Token.Kind.BREAK
                    || token.is(";")
                    || token.is("}")
                    || token.isWord("else")
                    || token.is("{") && !isArray()
                    || token.is(")") && headOf("if", "for", "while"))
        .orElse(true);
  }

  private boolean isArray() {
    return back(2).filter(token -> token.is("]") || token.is("=")).isPresent();
  }

  /** Whether the bracket that closes just before is that of one of these words. */
  boolean headOf(String... words) {
    int start = chains.start(tokens.size() - 1);
    String head = start > 0 ? tokens.get(start - 1).text() : "";
    return List.of(words).contains(head);
  }

  /** Whether nothing can be named here: a name or a value stands just before. */
  boolean followsValue() {
    Optional<Token> last = back(1);
    if (last.isEmpty()) {
      return false;
    }
    Token token = last.get();
    return switch (token.kind()) {
      case NUMBER, STRING, CHARACTER -> true;
      case NAME -> !Keywords.LEADS_ON.contains(token.text());
      case SIGN ->
          token.is("]")
              || token.is("++") && !isStatement()
              || token.is(")") && !isStatement() && !isCast();
      case BREAK -> false;
    };
  }

  private boolean isCast() {
    int close = tokens.size() - 1;
    int start = chains.start(close);
    if (!tokens.get(start).is("(")) {
      return false;
    }
    KnownTypes.Reading reading = scope.types().reading(tokens, start + 1);
    return reading.type().isPresent() && reading.end() == close;
  }

  /** The innermost call that is open here. Brackets that only group belong to what is around. */
  Optional<Open> call() {
    for (Open each : open) {
      if (chains.isCall(each.bracket())) {
        return Optional.of(each);
      }
      Token token = tokens.get(each.bracket());
      boolean groups =
          token.is("(")
              && (each.bracket() == 0 || tokens.get(each.bracket() - 1).kind() == Token.Kind.SIGN);
      if (!groups) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** Whether a method or a lambda with a block is open here, so that something can be returned. */
  boolean returns() {
    return open.stream()
        .map(Open::bracket)
        .filter(at -> at > 0 && tokens.get(at).is("{"))
        .anyMatch(at -> tokens.get(at - 1).is("->") || tokens.get(at - 1).is(")") && isMethod(at));
  }

  /** Whether a block is open here. */
  boolean inBlock() {
    return open.stream().anyMatch(each -> tokens.get(each.bracket()).is("{"));
  }

  private boolean isMethod(int block) {
    int start = chains.start(block - 1);
    return start < block - 1 && tokens.get(start).isName() && start > 0;
  }

  /** The name that is declared by what stands just before, as in {@code Position low =}. */
  Optional<String> beingDeclared() {
    boolean declares = behind("=") && back(3).filter(Token::isName).isPresent();
    return declares ? back(2).filter(Token::isName).map(Token::text) : Optional.empty();
  }

  /** The types that are wanted here, where something wants any. */
  List<Type> wanted() {
    int at = isStep() ? chains.start(tokens.size() - 2) : tokens.size();
    return wantedBefore(at);
  }

  private List<Type> wantedBefore(int at) {
    if (at == 0) {
      return List.of();
    }
    Token before = tokens.get(at - 1);
    if (before.is("(") || before.is(",")) {
      return wantedInBrackets(at);
    }
    if (before.is("->")) {
      return wantedByArrow(at - 1);
    }
    if (before.is("=")) {
      return assigned(at - 2);
    }
    if (before.isWord("return")) {
      return returned();
    }
    return List.of();
  }

  private List<Type> wantedInBrackets(int at) {
    for (Open each : open) {
      if (each.start() == at) {
        return chains.isCall(each.bracket())
            ? chains.wantedAt(each.bracket(), each.argument(), each.start())
            : tokens.get(each.bracket()).is("(") ? wantedBefore(each.bracket()) : List.of();
      }
    }
    return List.of();
  }

  private List<Type> wantedByArrow(int arrow) {
    for (Open each : open) {
      if (each.bracket() < arrow) {
        return lambdaGives(chains.wantedAt(each.bracket(), each.argument(), each.start()));
      }
    }
    return List.of();
  }

  private static List<Type> lambdaGives(List<Type> wanted) {
    return wanted.stream()
        .flatMap(
            type -> {
              Optional<Method> method = Types.lambda(type);
              return method.map(m -> Types.lambdaGives(type, m)).stream();
            })
        .distinct()
        .toList();
  }

  private List<Type> assigned(int name) {
    if (name < 0 || !tokens.get(name).isName()) {
      return List.of();
    }
    return scope
        .meaning(tokens.get(name).text())
        .filter(meaning -> !meaning.namesType())
        .filter(meaning -> name == 0 || !tokens.get(name - 1).isWord("var"))
        .map(Meaning::type)
        .map(List::of)
        .orElse(List.of());
  }

  private List<Type> returned() {
    for (Open each : open) {
      int at = each.bracket();
      if (at > 0 && tokens.get(at).is("{") && tokens.get(at - 1).is("->")) {
        return wantedByArrow(at - 1);
      }
      if (at > 0 && tokens.get(at).is("{") && tokens.get(at - 1).is(")") && isMethod(at)) {
        return declaredBefore(chains.start(at - 1));
      }
    }
    return List.of();
  }

  /** The type that stands before the name of a method. */
  private List<Type> declaredBefore(int name) {
    int from = name - 1;
    while (from >= 0
        && (tokens.get(from).isName()
            || tokens.get(from).is(".")
            || tokens.get(from).is("<")
            || tokens.get(from).is(">")
            || tokens.get(from).is(","))) {
      KnownTypes.Reading reading = scope.types().reading(tokens, from);
      Optional<Type> type = reading.type();
      if (type.isPresent() && reading.end() == name) {
        return List.of(type.get());
      }
      from--;
    }
    return List.of();
  }
}
