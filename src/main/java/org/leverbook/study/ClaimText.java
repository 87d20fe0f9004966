package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leverbook.display.Caution;
import org.leverbook.study.ClaimOutcome.Kind;

/** What an answer says in words. */
final class ClaimText {

  private ClaimText() {}

  /** A share with so many decimals that it never reads 0 or 100 % where it is not. */
  static String percent(long part, long whole) {
    if (whole == 0) {
      return "none";
    }
    double share = 100.0 * part / whole;
    String text = "";
    for (int decimals = 1; decimals <= 6; decimals++) {
      text = String.format(Locale.ROOT, "%." + decimals + "f", share);
      double shown = Double.parseDouble(text);
      if ((shown > 0 || part == 0) && (shown < 100 || part == whole)) {
        break;
      }
    }
    return text + " %";
  }

  static String of(ClaimAnswer answer, ClaimLedger ledger, int cases) {
    List<String> lines = new ArrayList<>();
    lines.add("Claim: " + answer.words());
    lines.add(verdict(ledger, cases));
    if (ledger.done() < cases) {
      lines.add(
          String.format(
              Locale.ROOT,
              "Stopped after %,d of %,d cases; these are the figures of those.",
              ledger.done(),
              cases));
    }
    lacking(ledger, Kind.NOT_HELD, "cannot be held", lines);
    lacking(ledger, Kind.NOT_TESTED, "could not be tested", lines);
    if (ledger.tested() > 0) {
      lines.addAll(extremes(answer));
      lines.addAll(separated(answer, ledger));
    }
    lines.add(Caution.TEXT);
    return String.join("\n", lines);
  }

  private static String verdict(ClaimLedger ledger, int cases) {
    int tested = ledger.tested();
    if (tested == 0) {
      return String.format(Locale.ROOT, "Could be tested in none of %,d cases.", ledger.done());
    }
    String holds = "Holds in " + percent(ledger.count(Kind.HOLDS), tested);
    int exceptions = ledger.count(Kind.FAILS);
    String outcome =
        tested == ledger.done()
            ? String.format(Locale.ROOT, "%s of %,d cases", holds, tested)
            : String.format(Locale.ROOT, "%s of %,d cases that can be tested", holds, tested);
    return String.format(
        Locale.ROOT,
        "%s%s: %s.",
        outcome,
        tested == ledger.done() ? "" : String.format(Locale.ROOT, " (of %,d)", ledger.done()),
        exceptions == 0
            ? "no exception"
            : exceptions == 1
                ? "1 exception"
                : String.format(Locale.ROOT, "%,d exceptions", exceptions));
  }

  private static void lacking(ClaimLedger ledger, Kind kind, String what, List<String> lines) {
    ClaimLedger.Reason most = ledger.most(kind);
    if (most != null) {
      lines.add(
          String.format(
              Locale.ROOT,
              "%,d %s; most frequent reason (%,d): %s",
              ledger.count(kind),
              what,
              most.cases(),
              most.sentence()));
    }
  }

  private static List<String> extremes(ClaimAnswer answer) {
    if (!answer.tellsMargins()) {
      List<String> lines = new ArrayList<>();
      answer.exception().ifPresent(e -> lines.add("First exception: " + e.text() + "."));
      lines.add(
          "Which cases are closest or worst is not known, because the test says only yes or no:"
              + " give .margin(…) to know.");
      return lines;
    }
    return List.of(
        "Middle margin: " + answer.marginText(answer.margin(0.5)) + ".",
        "Closest: " + answer.closest().text() + ".",
        "Worst: " + answer.worst().text() + ".");
  }

  private static List<String> separated(ClaimAnswer answer, ClaimLedger ledger) {
    int fewer = Math.min(ledger.count(Kind.HOLDS), ledger.count(Kind.FAILS));
    if (fewer == 0) {
      return List.of();
    }
    if (fewer < ClaimSplitter.FEWEST) {
      return List.of(
          String.format(
              Locale.ROOT,
              "With %d %s there is no telling what separates %s.",
              fewer,
              ledger.count(Kind.HOLDS) == fewer
                  ? fewer == 1 ? "holder" : "holders"
                  : fewer == 1 ? "exception" : "exceptions",
              fewer == 1 ? "it" : "them"));
    }
    if (answer.splits().isEmpty()) {
      return List.of("No input separates holders from exceptions.");
    }
    List<String> lines = new ArrayList<>();
    for (ClaimSplit split : answer.splits()) {
      String head =
          split.conditions().size() == 1
              ? split.good() ? "What separates best: " : "No input separates well; the best is "
              : "Two conditions: ";
      lines.add(head + split.text());
    }
    return lines;
  }
}
