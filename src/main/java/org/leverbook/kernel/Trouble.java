package org.leverbook.kernel;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.leverbook.quantity.Refused;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Problem;

/**
 * Why a request came to nothing, as messages tell it.
 *
 * @param name a short technical name
 * @param words what went wrong, in words
 * @param lines the same with its place, for a page
 */
record Trouble(String name, String words, List<String> lines) {

  private static final String RED = "\u001B[31m";
  private static final String PLAIN = "\u001B[0m";

  /** Keeps its own copy of the lines. */
  Trouble {
    lines = List.copyOf(lines);
  }

  /** What went wrong with a text. */
  static Trouble of(Evaluation evaluation) {
    if (evaluation.problem().isEmpty()) {
      return of("Unfinished", "This did not come to its end.");
    }
    Problem problem = evaluation.problem().get();
    List<String> lines = new ArrayList<>();
    String place = problem.line() + ":" + problem.column() + ": ";
    lines.add(red(place + problem.message()));
    if (!problem.name().equals("Stopped")) {
      problem.caret().lines().forEach(lines::add);
    }
    problem.trail().forEach(step -> lines.add("  " + step));
    lines.addAll(evaluation.notes());
    return new Trouble(problem.name(), problem.message(), lines);
  }

  /** A value that was to be shown and cannot be. */
  static Trouble of(Refused refused, int line) {
    String words = String.valueOf(refused.getMessage());
    return new Trouble("Refused", words, List.of(red(line + ":1: " + words)));
  }

  /** Something without a place. */
  static Trouble of(String name, String words) {
    return new Trouble(name, words, List.of(red(words)));
  }

  /** What should not have happened. */
  static Trouble of(Throwable failure) {
    return of(
        failure.getClass().getSimpleName(),
        "Leverbook itself failed at this ("
            + failure
            + "). What was computed before is kept; restart the kernel if it fails again.");
  }

  private static String red(String text) {
    return RED + text + PLAIN;
  }

  /** As fields of a message. */
  ObjectNode fields() {
    ObjectNode fields = Json.object();
    fields.put("ename", name);
    fields.put("evalue", words);
    fields.set("traceback", Json.array(lines));
    return fields;
  }

  /** As a reply. */
  ObjectNode reply() {
    ObjectNode reply = Json.object();
    reply.put("status", "error");
    return reply.setAll(fields());
  }
}
