package org.leverbook.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Suggestion;

/**
 * What the compiler knows beside its complaint: what a word takes, of which type a piece of code
 * is, what could stand at a place. Its caller holds the compile lock.
 */
final class Knowledge {

  private final SourceCodeAnalysis analysis;

  Knowledge(SourceCodeAnalysis analysis) {
    this.analysis = analysis;
  }

  /** The ways in which the call can be made whose bracket opens at a place; each once. */
  List<CallForm> forms(String code, int open) {
    String asked = code.substring(0, open + 1);
    List<CallForm> forms = new ArrayList<>();
    for (var each : analysis.documentation(asked, asked.length(), false)) {
      CallForm.of(each.signature()).filter(form -> !forms.contains(form)).ifPresent(forms::add);
    }
    return forms;
  }

  /**
   * The type of an expression.
   *
   * @param code the expression alone
   * @return its type without packages; empty where it cannot be told, as for a rule
   */
  Optional<String> type(String code) {
    String type = analysis.analyzeType(code, code.length());
    return type == null || type.isEmpty()
        ? Optional.empty()
        : Optional.of(Kinds.plain(type)).filter(t -> !code.equals("null"));
  }

  /** What may stand at a place of a code, whatever stands there now. */
  List<String> candidates(String code, int at) {
    return analysis.completionSuggestions(code.substring(0, at), at, new int[1]).stream()
        .map(Suggestion::continuation)
        .distinct()
        .toList();
  }
}
