package org.leverbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leverbook.language.Imports;
import org.leverbook.language.Vocabulary;

/** Lines of the language with one or two random slips in them: every answer is a plain sentence. */
class MutationTest {

  private static final int SLIPS = 600;
  private static final long[] SEEDS = {20_250_101, 20_250_102};

  private static final List<String> LINES =
      List.of(
          "barbell(kg(140))",
          "person(MALE, kg(85), cm(178))",
          "pull.hipHeight(cm(58))",
          "pull.start().moment(HIP)",
          "hinge(lifter).holding(barbell(lb(315)))",
          "var other = lifter.longer(THIGH, percent(8));",
          "masses.stream().map(m -> barbell(kg(m))).toList()",
          "pull.start().moment(HIP).size() > 5 * load",
          "half(load + 3.5) / 2",
          "if (load > 100) { load = load - 5; } else { load = 140; }",
          "for (int m : masses) { load = load + m; }",
          "\"hip height \" + load + \" cm\"",
          "Function<Integer, Integer> twice = x -> x * 2;",
          "List<Integer> more = new ArrayList<>(masses);",
          "int sum(int a, int b) { return a + b; }",
          "record Set(String name, int reps) { }",
          "masses.get(1)",
          "lifter.mass().multiply(1.5)",
          "chestPad(deg(45))",
          "dumbbells(kg(20))",
          "MALE == FEMALE ? \"same\" : \"other\"",
          "var ratio = 1.0 * load / masses.get(0);");

  private static final Pattern TOKEN =
      Pattern.compile("\"[^\"]*\"|[A-Za-z_]\\w*|\\d+(?:\\.\\d+)?|->|\\s+|.", Pattern.DOTALL);

  private static final String ODD = "()[]{}<>;:,.=+-*/%&|!?'\"\\#@ \n\t0aZé“\u00a0\u200b\u0000×";

  private static final Pattern NAMES_OF_THE_COMPILER =
      Pattern.compile(
          "\\$JShell|REPL|do_it|capture#|CAP#|INT#|compiler\\.|\\bjava\\.(?!time\\.LocalDate)"
              + "|javax\\.|org\\.leverbook|jdk\\.|\\b[A-Z] extends|<[A-Z]>|\\bexception occurred");

  @Test
  void a_line_with_a_slip_is_answered_in_plain_words_and_the_session_goes_on() {
    List<String> complaints =
        IntStream.range(0, SEEDS.length)
            .parallel()
            .mapToObj(i -> complaints(new Random(SEEDS[i])))
            .flatMap(List::stream)
            .toList();

    assertThat(complaints).isEmpty();
  }

  private static List<String> complaints(Random random) {
    List<String> complaints = new ArrayList<>();
    try (Session session = Session.open(new Preamble(Imports.SOURCE, List.of(Vocabulary.class)))) {
      String start =
          "var lifter = person(MALE, kg(85), cm(178)); var pull = hinge(lifter); int load = 140;"
              + " List<Integer> masses = List.of(60, 80);"
              + " double half(double x) { return x / 2; }";
      session.evaluate(start);
      int told = 0;
      for (int i = 0; i < SLIPS; i++) {
        String text = slip(LINES.get(random.nextInt(LINES.size())), random);
        if (random.nextInt(3) == 0) {
          text = slip(text, random);
        }
        String complaint = complaint(session, text);
        if (!complaint.isEmpty()) {
          complaints.add(complaint + " <- " + text);
        }
        told += complaint.isEmpty() ? 1 : 0;
      }
      Evaluation after = session.evaluate("1 + 1");
      if (!after.value().equals(java.util.Optional.of(new Value(2, 1)))) {
        complaints.add("the session does not answer after " + told + " slips");
      }
    }
    return complaints;
  }

  /** What is wrong with the answer to a text; empty where nothing is. */
  private static String complaint(Session session, String text) {
    Evaluation evaluation;
    try {
      session.completeness(text);
      evaluation = session.evaluate(text);
    } catch (RuntimeException | Error e) {
      return "thrown: " + e;
    }
    for (String note : evaluation.notes()) {
      if (note.isBlank() || NAMES_OF_THE_COMPILER.matcher(note).find()) {
        return "note: " + note;
      }
    }
    if (evaluation.problem().isEmpty()) {
      return "";
    }
    Problem problem = evaluation.problem().get();
    Matcher inner = NAMES_OF_THE_COMPILER.matcher(problem.message());
    boolean inside =
        problem.line() >= 1
            && problem.line() <= text.split("\n", -1).length
            && problem.column() >= 1
            && problem.column() <= problem.source().length() + 1;
    boolean whole = problem.message().strip().matches("(?s).+[.?!;:)\"]");
    if (problem.message().equals("This is not understood.")) {
      return "not worded: " + problem.original();
    }
    return problem.message().isBlank() || inner.find()
        ? "words: " + problem.message()
        : !inside
            ? "place: " + problem.line() + ":" + problem.column()
            : whole || problem.kind() == Problem.Kind.EXCEPTION
                ? ""
                : "no sentence: " + problem.message();
  }

  private static String slip(String line, Random random) {
    List<String> tokens = new ArrayList<>();
    Matcher token = TOKEN.matcher(line);
    while (token.find()) {
      tokens.add(token.group());
    }
    int at = random.nextInt(tokens.size());
    int other = random.nextInt(tokens.size());
    switch (random.nextInt(7)) {
      case 0:
        tokens.remove(at);
        break;
      case 1:
        tokens.add(at, tokens.get(at));
        break;
      case 2:
        String held = tokens.get(at);
        tokens.set(at, tokens.get(other));
        tokens.set(other, held);
        break;
      case 3:
        tokens.set(at, tokens.get(other));
        break;
      case 4:
        tokens.add(at, String.valueOf(ODD.charAt(random.nextInt(ODD.length()))));
        break;
      case 5:
        String word = tokens.get(at);
        int letter = random.nextInt(word.length());
        tokens.set(at, word.substring(0, letter) + word.substring(letter + 1));
        break;
      default:
        String swapped = tokens.get(at);
        int first = random.nextInt(swapped.length());
        int second = Math.min(swapped.length() - 1, first + 1);
        StringBuilder letters = new StringBuilder(swapped);
        letters.setCharAt(first, swapped.charAt(second));
        letters.setCharAt(second, swapped.charAt(first));
        tokens.set(at, letters.toString());
    }
    return String.join("", tokens);
  }
}
