package org.leverbook.session;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.leverbook.desk.Desk;

/**
 * How long completion, hints and documentation take: run as a program. It goes over all places of
 * the table of completions and prints the time of the asking thread's processor, which other work
 * on the machine disturbs least; milliseconds.
 */
final class AssistanceTiming {

  private static final int WARMING = 15;
  private static final int ROUNDS = 5;
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private AssistanceTiming() {}

  /** Something that is asked at a place. */
  private interface Question {
    Object ask(Session session, String text, int cursor);
  }

  public static void main(String[] arguments) throws IOException {
    try (Desk desk = Desk.open()) {
      desk.evaluate(CompletionTest.MADE, value -> {});
      List<String> places = CompletionTest.rows().map(row -> (String) row.get()[0]).toList();
      Session session = desk.session();
      System.out.printf(
          Locale.ROOT,
          "first completion: %.1f%n",
          time(session, "hinge(lifter).hol|", COMPLETIONS));
      System.out.printf(
          Locale.ROOT, "second, a name:   %.1f%n", time(session, "leverM|", COMPLETIONS));
      System.out.printf(
          Locale.ROOT, "third, a class:   %.1f%n", time(session, "Back|", COMPLETIONS));
      report("completion", session, places, COMPLETIONS);
      report("call hint", session, places, Session::callAt);
      report("documentation", session, places, (s, t, c) -> s.documentation(t, c, true));
    }
  }

  private static final Question COMPLETIONS = Session::completions;

  private static void report(String what, Session session, List<String> places, Question question) {
    for (int i = 0; i < WARMING; i++) {
      places.forEach(place -> time(session, place, question));
    }
    List<double[]> times = new ArrayList<>();
    for (String place : places) {
      double[] rounds = new double[ROUNDS];
      for (int i = 0; i < ROUNDS; i++) {
        rounds[i] = time(session, place, question);
      }
      Arrays.sort(rounds);
      times.add(new double[] {rounds[ROUNDS / 2], rounds[ROUNDS - 1], places.indexOf(place)});
    }
    double[] middle = times.stream().mapToDouble(t -> t[0]).sorted().toArray();
    double worst = times.stream().mapToDouble(t -> t[1]).max().orElse(0);
    System.out.printf(
        Locale.ROOT,
        "%-14s %d places: median %.2f, 9 of 10 under %.2f, slowest place %.2f, worst of all %.2f%n",
        what,
        middle.length,
        middle[middle.length / 2],
        middle[middle.length * 9 / 10],
        middle[middle.length - 1],
        worst);
    times.stream()
        .sorted((a, b) -> Double.compare(b[0], a[0]))
        .limit(5)
        .forEach(
            t -> System.out.printf(Locale.ROOT, "    %6.2f  %s%n", t[0], places.get((int) t[2])));
  }

  private static double time(Session session, String marked, Question question) {
    String text = marked.replace("\\n", "\n");
    int cursor = text.lastIndexOf('|');
    String bare = text.substring(0, cursor) + text.substring(cursor + 1);
    long before = CLOCK.getCurrentThreadCpuTime();
    question.ask(session, bare, cursor);
    return (CLOCK.getCurrentThreadCpuTime() - before) / 1e6;
  }
}
