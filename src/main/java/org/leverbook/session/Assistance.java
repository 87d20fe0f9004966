package org.leverbook.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.JShell;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Documentation;
import jdk.jshell.SourceCodeAnalysis.Suggestion;

/**
 * Completion, hints and documentation; its caller holds the compile lock.
 *
 * <p>A line is first read by {@link Place}, which takes well under a millisecond; where it meets
 * what it does not understand, the compiler is asked, which takes ten to twenty.
 */
final class Assistance {

  /** A signature by the compiler costs some milliseconds; a long list goes without. */
  private static final int MOST_EXPLAINED = 3;

  private static final Set<String> OF_EVERY_OBJECT =
      Set.of(
          "equals(", "getClass()", "hashCode()", "notify()", "notifyAll()", "toString()", "wait(");

  /** What the compiler says of a method: its type, then its owner, name and parameters. */
  private static final Pattern SIGNATURE =
      Pattern.compile("(?:<.*?> )?(\\S.*?) ((?:[\\w.]+\\.)?\\w+\\(.*\\).*)");

  private static final Pattern TYPE_NAME = Pattern.compile("[A-Z][\\w.]*");

  private final SourceCodeAnalysis analysis;
  private final Splitter splitter;
  private final Declared declared;
  private final StaticWords words;
  private final List<Suggestions> suggestions;
  private final Javadocs javadocs = new Javadocs();
  private final Forms forms = new Forms();
  private final Abouts abouts = new Abouts(javadocs, forms);
  private List<String> typeNames;
  private KnownTypes typesThen;

  Assistance(JShell shell, SnippetLoader loader, Splitter splitter, Preamble preamble) {
    this.analysis = shell.sourceCodeAnalysis();
    this.splitter = splitter;
    this.declared = new Declared(shell, loader);
    this.words = new StaticWords(preamble.vocabulary());
    this.suggestions = preamble.suggestions();
  }

  /** Reads what the first completion would wait for; on any thread. */
  void prepare() {
    words.methods();
  }

  private Place place(String text, int cursor) {
    return new Place(text, cursor, new Scope(declared, words), forms);
  }

  /** The ways to go on at a place, each once: those first that fit, then by the alphabet. */
  List<Completion> completions(String text, int cursor) {
    Place place = place(text, cursor);
    if (place.in() == Tokens.In.WORDS || isNumber(place)) {
      return List.of();
    }
    if (place.in() == Tokens.In.STRING) {
      return quoted(place, text, cursor);
    }
    Offers offers = new Offers(place, place.from(cursor), abouts);
    if (place.isStep()) {
      return place
          .receiver()
          .map(of -> offers.steps(of, forms))
          .orElseGet(() -> compilers(place, text, cursor));
    }
    if (place.back(1).filter(t -> t.is("::")).isPresent()) {
      return place.receiver().map(of -> offers.references(of, forms)).orElse(List.of());
    }
    boolean beyond =
        place.back(1).filter(t -> t.isWord("new") || t.is("@")).isPresent() || isImport(place);
    if (beyond) {
      return compilers(place, text, cursor);
    }
    String prefix = place.prefix();
    boolean maybeType = !prefix.isEmpty() && Character.isUpperCase(prefix.charAt(0));
    List<Completion> found = offers.names(maybeType ? typeNames(place) : List.of());
    return found.isEmpty() && !prefix.isEmpty() && !maybeType
        ? offers.names(typeNames(place))
        : found;
  }

  private static boolean isNumber(Place place) {
    return place.prefix().isEmpty()
        && place.back(1).filter(t -> t.kind() == Token.Kind.NUMBER).isPresent();
  }

  private static boolean isImport(Place place) {
    for (int i = 1; i <= place.size(); i++) {
      Token token = place.back(i).orElseThrow();
      if (token.isWord("import")) {
        return true;
      }
      if (token.is(";") || token.kind() == Token.Kind.BREAK || token.is("(")) {
        return false;
      }
    }
    return false;
  }

  /** The names of the types that can be named here, where one may be meant. */
  private List<String> typeNames(Place place) {
    KnownTypes now = declared.types();
    if (typeNames == null || typesThen != now) {
      typesThen = now;
      typeNames =
          analysis.completionSuggestions("", 0, new int[1]).stream()
              .map(Suggestion::continuation)
              .filter(name -> TYPE_NAME.matcher(name).matches())
              .filter(name -> !words.constants().containsKey(name))
              .distinct()
              .toList();
    }
    List<String> all = new ArrayList<>(typeNames);
    all.addAll(declared.typeNames());
    Map<String, ?> own = place.scope().own();
    return all.stream().filter(name -> !own.containsKey(name)).distinct().toList();
  }

  private List<Completion> quoted(Place place, String text, int cursor) {
    int from = place.quote() + 1;
    String begun = text.substring(from, cursor);
    Optional<Place.Open> call = place.call().filter(open -> open.start() == place.size());
    if (call.isEmpty()) {
      return List.of();
    }
    int open = call.get().bracket();
    int argument = call.get().argument();
    List<Form> called = place.chains().forms(open);
    String name = place.expressions().tokens().get(open - 1).text();
    Optional<Form> form = called.stream().filter(f -> f.typeAt(argument).isPresent()).findFirst();
    String parameter =
        form.map(f -> f.parameters().get(Math.min(argument, f.parameters().size() - 1)).name())
            .orElse("");
    Optional<Class<?>> owner = form.map(Form::owner);
    var where = new Suggestions.Quoted(owner, name, argument, parameter, begun);
    return suggestions.stream()
        .flatMap(each -> each.at(where).stream())
        .filter(each -> each.text().regionMatches(true, 0, begun, 0, begun.length()))
        .sorted(
            Comparator.comparing((Suggestions.Suggestion each) -> !each.fits())
                .thenComparing(Suggestions.Suggestion::text))
        .map(each -> new Completion(from, each.text(), "", each.about()))
        .distinct()
        .toList();
  }

  /** What the compiler offers, for lines that only it understands. */
  private List<Completion> compilers(Place place, String text, int cursor) {
    int start = unitStart(text, cursor);
    String unit = text.substring(start, cursor);
    int[] anchor = {unit.length()};
    Map<String, Suggestion> found = new LinkedHashMap<>();
    for (Suggestion each : analysis.completionSuggestions(unit, unit.length(), anchor)) {
      found.merge(each.continuation(), each, (one, other) -> one.matchesType() ? one : other);
    }
    if (!OF_EVERY_OBJECT.containsAll(found.keySet()) || place.prefix().isEmpty()) {
      found.keySet().removeAll(OF_EVERY_OBJECT);
    }
    String before = unit.substring(0, Math.min(anchor[0], unit.length()));
    boolean few = found.size() <= MOST_EXPLAINED;
    return found.values().stream()
        .sorted(
            Comparator.comparing((Suggestion each) -> !each.matchesType())
                .thenComparing(Suggestion::continuation))
        .map(each -> offered(each.continuation(), start + anchor[0], few ? before : null))
        .toList();
  }

  private Completion offered(String word, int from, String before) {
    Optional<Class<?>> type = declared.types().named(Spelling.bare(word));
    if (type.isPresent()) {
      List<Form> makers = word.endsWith("(") ? Forms.makers(type.get()) : List.of();
      String signature = makers.isEmpty() ? "" : Terms.form(makers.get(0));
      return new Completion(from, word, signature, abouts.of(type.get()));
    }
    if (before == null || !word.endsWith("(")) {
      return new Completion(from, word, "", "");
    }
    List<String> known = compilersDocumentation(before + word, false);
    String more = known.size() > 1 ? " (and " + (known.size() - 1) + " more)" : "";
    return new Completion(from, word, known.isEmpty() ? "" : known.get(0) + more, "");
  }

  /** What may stand at a place of a unit, whatever stands there now. */
  List<String> candidates(String unit, int at) {
    return analysis.completionSuggestions(unit.substring(0, at), at, new int[1]).stream()
        .map(Suggestion::continuation)
        .distinct()
        .toList();
  }

  /** The signatures of the word at a place, and what its documentation says where it is known. */
  List<String> documentation(String text, int cursor, boolean whole) {
    int end = wordEnd(text, cursor);
    Place place = place(text, end);
    if (place.in() != Tokens.In.CODE) {
      return List.of();
    }
    if (place.prefix().isEmpty()) {
      Optional<Place.Open> call = place.call();
      if (call.isEmpty()) {
        return List.of();
      }
      end = place.expressions().tokens().get(call.get().bracket() - 1).end();
      place = place(text, end);
    }
    List<String> known = new Explanations(javadocs, whole).of(place, place.expressions());
    if (!known.isEmpty()) {
      return known;
    }
    int start = unitStart(text, end);
    boolean opens = end < text.length() && text.charAt(end) == '(';
    return compilersDocumentation(text.substring(start, end) + (opens ? "(" : ""), whole);
  }

  private static int wordEnd(String text, int cursor) {
    int end = cursor;
    while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
      end++;
    }
    return end;
  }

  private List<String> compilersDocumentation(String asked, boolean whole) {
    return analysis.documentation(asked, asked.length(), whole).stream()
        .map(each -> said(each))
        .distinct()
        .toList();
  }

  private static String said(Documentation each) {
    String cleaned = Words.cleaned(each.signature());
    Matcher method = SIGNATURE.matcher(cleaned);
    String signature = cleaned;
    if (method.matches()) {
      boolean nothing = method.group(1).equals("void");
      signature = method.group(2) + (nothing ? "" : ": " + method.group(1));
    }
    return each.javadoc() == null ? signature : signature + "\n" + each.javadoc().strip();
  }

  /** What the innermost call takes whose bracket is open at a place. */
  Optional<CallHint> callAt(String text, int cursor) {
    Place place = place(text, cursor);
    Optional<Place.Open> call = place.in() == Tokens.In.CODE ? place.call() : Optional.empty();
    if (call.isEmpty()) {
      return Optional.empty();
    }
    Place.Open open = call.get();
    List<Form> known = place.chains().forms(open.bracket());
    if (known.isEmpty()) {
      int bracket = place.expressions().tokens().get(open.bracket()).start();
      String asked = text.substring(unitStart(text, bracket), bracket + 1);
      List<String> lines = compilersDocumentation(asked, false);
      return lines.isEmpty() ? Optional.empty() : Optional.of(new CallHint(lines, open.argument()));
    }
    Calls calls = place.expressions().calls();
    List<int[]> before = place.chains().before(open.bracket(), open.argument(), open.start());
    List<String> lines =
        calls.ordered(known, before).stream()
            .map(form -> Terms.form(calls.filled(form, before)))
            .distinct()
            .toList();
    return Optional.of(new CallHint(lines, open.argument()));
  }

  /** Where the unit begins that holds the cursor. */
  private int unitStart(String text, int cursor) {
    SourceText source = new SourceText(text.substring(0, cursor));
    int from = 0;
    while (true) {
      Unit unit = splitter.next(source, from);
      boolean last = unit.kind() != Unit.Kind.COMPLETE || unit.end() >= cursor;
      if (unit.kind() == Unit.Kind.NOTHING) {
        return from;
      }
      if (last) {
        return unit.start();
      }
      from = unit.end();
    }
  }
}
