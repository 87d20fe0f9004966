package org.leverbook.session;

import com.google.common.reflect.TypeResolver;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which form of a call its arguments choose, and what it then gives. */
final class Calls {

  private final Expressions expressions;
  private final Scope scope;
  private final Forms forms;

  Calls(Expressions expressions, Scope scope, Forms forms) {
    this.expressions = expressions;
    this.scope = scope;
    this.forms = forms;
  }

  /** What can be called by a name on a value, or on a type. */
  List<Form> ofValue(Meaning of, String name) {
    return forms.named(of.type(), name).stream()
        .filter(form -> form.isStatic() || !of.namesType())
        .toList();
  }

  /** What a field of a value or a type means; a type within a type too. */
  Optional<Meaning> field(Meaning of, String name) {
    Class<?> raw = Types.raw(of.type());
    if (raw.isArray()) {
      return name.equals("length") ? Optional.of(Meaning.value(int.class)) : Optional.empty();
    }
    Optional<Meaning> field =
        Expressions.field(raw, name)
            .filter(f -> Modifier.isStatic(f.getModifiers()) || !of.namesType())
            .map(f -> Meaning.value(f.getGenericType()));
    if (field.isPresent() || !of.namesType()) {
      return field;
    }
    for (Class<?> inner : raw.getClasses()) {
      if (inner.getSimpleName().equals(name)) {
        return Optional.of(new Meaning(inner, true));
      }
    }
    return Optional.empty();
  }

  /** The type that a call gives; empty where no form takes the arguments. */
  Optional<Type> given(List<Form> all, List<int[]> arguments) {
    List<Optional<Type>> types = types(arguments);
    return all.stream()
        .filter(form -> form.takesExactly(arguments.size()) && fits(form, types))
        .min(Comparator.comparing(Form::varargs))
        .map(form -> known(form, arguments, types).resolveType(form.gives()))
        .filter(type -> type != void.class)
        .map(Types::bound);
  }

  private List<Optional<Type>> types(List<int[]> arguments) {
    List<Optional<Type>> types = new ArrayList<>();
    for (int[] each : arguments) {
      types.add(
          lambdaNames(each).isEmpty()
              ? expressions.typeOf(each[0], each[1])
              : Optional.of(Lambda.class));
    }
    return types;
  }

  /** Stands for the type of any lambda: what it is, its place decides. */
  private static final class Lambda {}

  /** Whether a form can take these arguments, as far as they are known. */
  private static boolean fits(Form form, List<Optional<Type>> types) {
    TypeResolver known = new TypeResolver();
    for (int i = 0; i < types.size(); i++) {
      Optional<Type> wanted = form.typeAt(i);
      if (wanted.isEmpty()) {
        return false;
      }
      if (types.get(i).isPresent()) {
        Type given = types.get(i).get();
        Type open = known.resolveType(wanted.get());
        boolean last = form.varargs() && i == form.parameters().size() - 1;
        boolean array = last && Types.fits(form.parameters().get(i).type(), given);
        if (given == Lambda.class
            ? Types.lambda(open).isEmpty()
            : !array && !Types.fits(open, given)) {
          return false;
        }
        known = given == Lambda.class ? known : Types.learned(known, wanted.get(), given);
      }
    }
    return true;
  }

  /** What the variables of a form stand for, given its arguments. */
  private TypeResolver known(Form form, List<int[]> arguments, List<Optional<Type>> types) {
    TypeResolver known = new TypeResolver();
    for (int i = 0; i < types.size(); i++) {
      Optional<Type> given = types.get(i);
      Optional<Type> wanted = form.typeAt(i);
      if (given.isPresent() && given.get() != Lambda.class && wanted.isPresent()) {
        known = Types.learned(known, wanted.get(), given.get());
      }
    }
    for (int i = 0; i < types.size(); i++) {
      Optional<Type> wanted = form.typeAt(i);
      if (types.get(i).equals(Optional.of(Lambda.class)) && wanted.isPresent()) {
        known = learnedFromLambda(known, wanted.get(), arguments.get(i));
      }
    }
    return known;
  }

  private TypeResolver learnedFromLambda(TypeResolver known, Type wanted, int[] argument) {
    Type of = known.resolveType(wanted);
    Optional<Method> method = Types.lambda(of);
    if (method.isEmpty() || !Types.isOpen(Types.lambdaGives(of, method.get()))) {
      return known;
    }
    List<String> names = lambdaNames(argument);
    List<Type> takes = Types.lambdaTakes(of, method.get());
    Map<String, Optional<Meaning>> meanings = new HashMap<>();
    for (int i = 0; i < names.size(); i++) {
      meanings.put(
          names.get(i),
          i < takes.size() ? Optional.of(Meaning.value(takes.get(i))) : Optional.empty());
    }
    int body = arrow(argument) + 1;
    Optional<Type> gives = scope.within(meanings, () -> expressions.typeOf(body, argument[1]));
    return gives
        .map(type -> Types.learned(known, Types.lambdaGives(of, method.get()), type))
        .orElse(known);
  }

  /** The names that a lambda gives to what it takes; empty where a stretch is no lambda. */
  List<String> lambdaNames(int[] argument) {
    int arrow = arrow(argument);
    if (arrow < 0) {
      return List.of();
    }
    List<String> names = new ArrayList<>();
    for (int i = argument[0]; i < arrow; i++) {
      Token next = expressions.tokens().get(i + 1);
      if (expressions.tokens().get(i).isName() && (next.is(",") || next.is(")") || next.is("->"))) {
        names.add(expressions.tokens().get(i).text());
      }
    }
    // A lambda that takes nothing is one too.
    return names.isEmpty() ? List.of("") : names;
  }

  /** The arrow of the lambda that fills a stretch; -1 where there is none. */
  private int arrow(int[] argument) {
    List<Token> tokens = expressions.tokens();
    int at = argument[0];
    if (at >= argument[1]) {
      return -1;
    }
    int behind = tokens.get(at).is("(") ? expressions.closer(at) + 1 : at + 1;
    return behind < argument[1] && tokens.get(behind).is("->") ? behind : -1;
  }

  /** Forms with those first that fit the arguments so far and have room for one more. */
  List<Form> ordered(List<Form> all, List<int[]> before) {
    List<Optional<Type>> types = types(before);
    return all.stream()
        .sorted(
            Comparator.comparing((Form form) -> !fits(form, types))
                .thenComparing(
                    form -> form.typeAt(before.size()).isEmpty() && !isWhole(form, before))
                .thenComparing(form -> form.parameters().size())
                .thenComparing(form -> Terms.form(form).length()))
        .toList();
  }

  private static boolean isWhole(Form form, List<int[]> before) {
    return before.isEmpty() && form.parameters().isEmpty();
  }

  /** The types that the forms which fit so far want at the next place. */
  List<Type> wanted(List<Form> all, List<int[]> before) {
    List<Optional<Type>> types = types(before);
    return all.stream()
        .filter(form -> fits(form, types))
        .flatMap(
            form -> {
              TypeResolver known = known(form, before, types);
              return form.typeAt(before.size()).map(known::resolveType).stream();
            })
        .distinct()
        .toList();
  }

  /** A form as its arguments so far fill it in. */
  Form filled(Form form, List<int[]> before) {
    List<Optional<Type>> types = types(before);
    if (!fits(form, types)) {
      return form;
    }
    TypeResolver known = known(form, before, types);
    List<Form.Parameter> parameters =
        form.parameters().stream()
            .map(each -> new Form.Parameter(each.name(), known.resolveType(each.type())))
            .toList();
    return new Form(
        form.name(),
        form.owner(),
        parameters,
        form.varargs(),
        known.resolveType(form.gives()),
        form.isStatic(),
        form.origin());
  }
}
