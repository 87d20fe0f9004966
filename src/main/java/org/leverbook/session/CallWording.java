package org.leverbook.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A call that does not fit what the word takes, in words. */
final class CallWording {

  private final Makers makers;
  private final FittingTypes types;
  private final Knowledge knowledge;
  private final KindWording kinds;

  CallWording(Makers makers, FittingTypes types, Knowledge knowledge) {
    this.makers = makers;
    this.types = types;
    this.knowledge = knowledge;
    this.kinds = new KindWording(makers, types, knowledge);
  }

  /** What is wrong with a call; empty where its form seems right. */
  Optional<Told> of(String code, Call call) {
    List<CallForm> forms = knowledge.forms(code, call.open());
    if (forms.isEmpty()) {
      return Optional.empty();
    }
    if (call.arguments().isEmpty() && forms.stream().noneMatch(f -> f.takes(0))) {
      return Optional.of(new Told(empty(call, forms), call.nameAt()));
    }
    Optional<Told> comma = decimalComma(call, forms);
    if (comma.isPresent()) {
      return comma;
    }
    List<String> given = call.arguments().stream().map(this::type).toList();
    for (CallForm form : forms) {
      Optional<String> order = order(call, given, form);
      if (order.isPresent()) {
        return Optional.of(new Told(order.get(), call.nameAt()));
      }
    }
    Alignment best =
        forms.stream()
            .map(form -> Alignment.of(call.arguments(), given, form, types))
            .min(Comparator.comparingInt(Alignment::cost))
            .orElseThrow();
    return told(call, given, best, forms);
  }

  /**
   * What is wrong with one argument whose kind only the compiler knows, as of a name that a rule
   * brings in.
   */
  Optional<Told> argument(String code, Call call, int at, String found, String needed) {
    for (CallForm form : knowledge.forms(code, call.open())) {
      for (int i = 0; i < call.arguments().size(); i++) {
        Call.Argument argument = call.arguments().get(i);
        Optional<CallForm.Parameter> asked = form.at(i).filter(p -> p.type().equals(needed));
        if (argument.at() == at && asked.isPresent()) {
          String who = call.name() + "(...)";
          String as = form.said(asked.get());
          return Optional.of(new Told(kinds.needs(who, as, needed, argument.text(), found), at));
        }
      }
    }
    return Optional.empty();
  }

  /** The type of an argument; empty for a rule, and where it cannot be told. */
  private String type(Call.Argument argument) {
    return argument.isRule() ? "" : knowledge.type(argument.text()).orElse("");
  }

  private Optional<Told> told(Call call, List<String> given, Alignment best, List<CallForm> forms) {
    String who = call.name() + "(...)";
    if (!best.wrong().isEmpty()) {
      int index = best.wrong().get(0);
      Call.Argument argument = call.arguments().get(index);
      CallForm.Parameter parameter = best.parameterOf(index);
      String message =
          Kinds.rule(parameter.type()) >= 0
              ? rule(who, argument, parameter, given.get(index))
              : argument.isRule()
                  ? who + " needs " + best.form().said(parameter) + " here, no rule."
                  : kinds.needs(
                      who,
                      best.form().said(parameter),
                      parameter.type(),
                      argument.text(),
                      given.get(index));
      return Optional.of(new Told(message + others(best, forms), argument.at()));
    }
    if (!best.missing().isEmpty()) {
      return Optional.of(new Told(missing(who, call, best), call.nameAt()));
    }
    if (!best.extra().isEmpty()) {
      Call.Argument first = call.arguments().get(best.extra().get(0));
      return Optional.of(new Told(extra(who, call, best, forms), first.at()));
    }
    return Optional.empty();
  }

  /** Other kinds that could stand there as well. */
  private static String others(Alignment best, List<CallForm> forms) {
    int index = best.wrong().get(0);
    String needed = Kinds.a(best.parameterOf(index).type());
    List<String> also =
        forms.stream()
            .filter(form -> form != best.form() && form.takes(best.count()))
            .flatMap(form -> form.at(index).stream())
            .map(p -> Kinds.a(p.type()))
            .filter(kind -> !kind.equals(needed) && !kind.equals("a value"))
            .distinct()
            .limit(3)
            .toList();
    return also.isEmpty() || index > 0 ? "" : " It also takes " + Words.choice(also) + ".";
  }

  private String empty(Call call, List<CallForm> forms) {
    String example = makers.call(call.name());
    CallForm shortest =
        forms.stream().min(Comparator.comparingInt(f -> f.parameters().size())).orElseThrow();
    String needed =
        shortest.parameters().stream().map(shortest::said).collect(Collectors.joining(", "));
    String such =
        !example.isEmpty()
            ? ", as in " + example
            : shortest.parameters().size() == 1
                ? kinds.example(shortest.parameters().get(0).type())
                : "";
    return call.name() + "(...) needs " + needed + such + ".";
  }

  private String missing(String who, Call call, Alignment best) {
    List<String> needed =
        best.missing().stream()
            .map(index -> best.form().parameters().get(index))
            .map(best.form()::said)
            .toList();
    String example = makers.call(call.name());
    CallForm.Parameter first = best.form().parameters().get(best.missing().get(0));
    String such =
        example.isEmpty()
            ? needed.size() == 1 ? kinds.example(first.type()) : ""
            : ", as in " + example;
    return who + " also needs " + String.join(" and ", needed) + such + ".";
  }

  private static String extra(String who, Call call, Alignment best, List<CallForm> forms) {
    List<String> surplus =
        best.extra().stream().map(index -> call.arguments().get(index).brief()).toList();
    String leave = ": leave out " + String.join(", ", surplus) + ".";
    if (best.form().parameters().isEmpty() && forms.size() == 1) {
      return call.name() + "() takes nothing in its brackets" + leave;
    }
    return who + " takes only " + best.form().said() + leave;
  }

  private String rule(String who, Call.Argument argument, CallForm.Parameter needed, String type) {
    int takes = argument.ruleTakes();
    int wanted = Kinds.rule(needed.type());
    if (takes >= 0) {
      String head = wanted == 0 ? "() ->" : wanted == 1 ? "x ->" : "(x, y) ->";
      return String.format(
          "%s hands its rule %s, but this one takes %s: begin it with %s.",
          who, count(wanted), count(takes), head);
    }
    String said = who + " needs " + Kinds.a(needed.type());
    return said + ", got " + argument.brief() + (type.isEmpty() ? "." : ", " + Kinds.a(type) + ".");
  }

  private static String count(int values) {
    return values == 0 ? "nothing" : values == 1 ? "one value" : "two values";
  }

  /** Two whole numbers around a comma, where one number is asked. */
  private static Optional<Told> decimalComma(Call call, List<CallForm> forms) {
    List<Call.Argument> arguments = call.arguments();
    for (int i = 0; i + 1 < arguments.size(); i++) {
      Call.Argument whole = arguments.get(i);
      Call.Argument part = arguments.get(i + 1);
      boolean digits = whole.text().matches("-?\\d+") && part.text().matches("\\d+");
      boolean near = part.at() - whole.at() - whole.text().length() == 1;
      boolean one = forms.stream().anyMatch(f -> f.parameters().size() == arguments.size() - 1);
      boolean two = forms.stream().anyMatch(f -> f.takes(arguments.size()));
      if (digits && near && one && !two) {
        String said = whole.text() + "," + part.text();
        String point = whole.text() + "." + part.text();
        String who = arguments.size() == 2 ? call.name() + "(" + point + ")" : point;
        return Optional.of(
            new Told(
                said + " are two numbers: a decimal has a point. Write " + who + ".", whole.at()));
      }
    }
    return Optional.empty();
  }

  /** All values are there, in another order. */
  private Optional<String> order(Call call, List<String> given, CallForm form) {
    int count = given.size();
    if (count < 2 || form.many() || form.parameters().size() != count || given.contains("")) {
      return Optional.empty();
    }
    List<Integer> left = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      left.add(i);
    }
    List<String> ordered = new ArrayList<>();
    boolean moved = false;
    for (int at = 0; at < count; at++) {
      String asked = form.parameters().get(at).type();
      Optional<Integer> found =
          left.stream().filter(i -> types.fits(given.get(i), asked).orElse(false)).findFirst();
      if (found.isEmpty()) {
        return Optional.empty();
      }
      moved |= found.get() != at;
      left.remove(found.get());
      ordered.add(call.arguments().get(found.get()).text());
    }
    return moved
        ? Optional.of(
            call.name()
                + "(...) takes its values in this order: "
                + call.name()
                + "("
                + String.join(", ", ordered)
                + ").")
        : Optional.empty();
  }
}
