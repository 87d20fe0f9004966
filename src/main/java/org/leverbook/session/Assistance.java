package org.leverbook.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Documentation;
import jdk.jshell.SourceCodeAnalysis.Suggestion;

/** Completion and documentation; its caller holds the compile lock. */
final class Assistance {

  /** A signature costs some milliseconds; a long list goes without. */
  private static final int MOST_EXPLAINED = 12;

  /** What every object can be asked hides what this one can; offered only where nothing else is. */
  private static final Set<String> OF_EVERY_OBJECT =
      Set.of(
          "equals(", "getClass()", "hashCode()", "notify()", "notifyAll()", "toString()", "wait(");

  private final SourceCodeAnalysis analysis;
  private final Splitter splitter;

  Assistance(SourceCodeAnalysis analysis, Splitter splitter) {
    this.analysis = analysis;
    this.splitter = splitter;
  }

  /** The ways to go on at a place, each once, in order of the alphabet. */
  List<Completion> completions(String text, int cursor) {
    int start = unitStart(text, cursor);
    String unit = text.substring(start, cursor);
    Brackets brackets = new Brackets(text, start);
    brackets.readTo(cursor);
    if (brackets.inWords()) {
      return List.of();
    }
    int[] anchor = {unit.length()};
    Map<String, Completion> found = new LinkedHashMap<>();
    for (Suggestion each : analysis.completionSuggestions(unit, unit.length(), anchor)) {
      found.computeIfAbsent(
          each.continuation(), word -> new Completion(start + anchor[0], word, "", ""));
    }
    if (!OF_EVERY_OBJECT.containsAll(found.keySet())) {
      found.keySet().removeAll(OF_EVERY_OBJECT);
    }
    String before = unit.substring(0, Math.min(anchor[0], unit.length()));
    boolean few = found.size() <= MOST_EXPLAINED;
    return found.values().stream()
        .sorted(java.util.Comparator.comparing(Completion::text))
        .map(each -> few && each.text().endsWith("(") ? explained(each, before) : each)
        .toList();
  }

  private Completion explained(Completion each, String before) {
    String call = before + each.text();
    List<Documentation> known = analysis.documentation(call, call.length(), false);
    String signature = known.isEmpty() ? "" : Words.cleaned(known.get(0).signature());
    String more = known.size() > 1 ? " (and " + (known.size() - 1) + " more)" : "";
    return new Completion(each.from(), each.text(), signature + more, "");
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
    int start = unitStart(text, cursor);
    // Inside or just behind a word, ask at its end; behind an opening bracket, ask for the call.
    int end = cursor;
    while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
      end++;
    }
    String unit = text.substring(start, end);
    boolean opens = end < text.length() && text.charAt(end) == '(';
    String asked = opens ? unit + "(" : unit;
    List<Documentation> found = analysis.documentation(asked, asked.length(), whole);
    return found.stream().map(each -> said(each)).distinct().toList();
  }

  /** What the innermost call takes whose bracket is open at a place. */
  Optional<CallHint> callAt(String text, int cursor) {
    Brackets brackets = new Brackets(text, unitStart(text, cursor));
    brackets.readTo(cursor);
    Optional<Integer> open = brackets.innermostOpen().filter(at -> text.charAt(at) == '(');
    if (open.isEmpty()) {
      return Optional.empty();
    }
    List<String> forms = documentation(text, open.get(), false);
    return forms.isEmpty()
        ? Optional.empty()
        : Optional.of(new CallHint(forms, commas(text, open.get() + 1, cursor)));
  }

  /** How many commas between two places stand in no bracket and no quote that opens there. */
  private static int commas(String text, int from, int to) {
    Brackets inside = new Brackets(text, from);
    int count = 0;
    for (int at = from; at < to; at++) {
      inside.readTo(at);
      boolean bare = inside.innermostOpen().isEmpty() && !inside.inWords();
      count += bare && text.charAt(at) == ',' ? 1 : 0;
    }
    return count;
  }

  private static String said(Documentation each) {
    String signature = Words.cleaned(each.signature());
    return each.javadoc() == null ? signature : signature + "\n" + each.javadoc().strip();
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
