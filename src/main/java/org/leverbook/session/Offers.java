package org.leverbook.session;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Gathers the ways to go on at one place, those first that give what is wanted there. */
final class Offers {

  /**
   * The user's own values and methods that fit come first, then words, then what own values give.
   */
  private static final int OWN = 0;

  private static final int MADE_BY_OWN = 1;
  private static final int FITTING = 2;
  private static final int OF_OWN = 3;
  private static final int BY_FULL_NAME = 4;
  private static final int OTHER = 5;

  /** What can be asked of the user's values to get what is wanted: more than this is a crowd. */
  private static final int MOST_OF_OWN = 12;

  private static final int MOST_OF_ONE = 4;

  private final Place place;
  private final int from;
  private final Abouts abouts;
  private final List<Type> wanted;
  private final List<Offer> offers = new ArrayList<>();

  private record Offer(int rank, Completion completion) {}

  /**
   * Offers at a place.
   *
   * @param place the place
   * @param from where the word begins that is being typed
   * @param abouts says in one line what something is
   */
  Offers(Place place, int from, Abouts abouts) {
    this.place = place;
    this.from = from;
    this.abouts = abouts;
    this.wanted = place.wanted().stream().filter(type -> !Types.saysNothing(type)).toList();
  }

  /** The steps that can be asked of a value or a type. */
  List<Completion> steps(Meaning of, Forms forms) {
    List<Form> all = forms.of(of.type());
    Class<?> raw = Types.raw(of.type());
    if (raw.isArray()) {
      add(OTHER, "length", "whole number", "how many there are");
    }
    Map<String, List<Form>> byName =
        all.stream()
            .filter(form -> form.isStatic() == of.namesType())
            .collect(Collectors.groupingBy(Form::name, TreeMap::new, Collectors.toList()));
    byName.forEach(
        (name, some) -> {
          List<Form> kept = some.stream().filter(form -> !isOfEveryObject(form)).toList();
          if (!kept.isEmpty()) {
            addForms(kept, fitsAny(kept) ? FITTING : OTHER);
          }
        });
    for (Field field : Forms.fields(raw)) {
      if (Modifier.isStatic(field.getModifiers()) == of.namesType()) {
        Type type = field.getGenericType();
        add(fits(type) ? FITTING : OTHER, field.getName(), Terms.of(type), abouts.of(field));
      }
    }
    if (of.namesType()) {
      for (Class<?> inner : raw.getDeclaredClasses()) {
        if (!Modifier.isPublic(inner.getModifiers())) {
          continue;
        }
        add(OTHER, inner.getSimpleName(), Terms.of(inner), abouts.of(inner));
      }
    }
    List<Completion> found = ranked(false);
    if (found.isEmpty() && !place.prefix().isEmpty()) {
      byName.forEach((name, some) -> addForms(some, OTHER));
      return ranked(false);
    }
    return found;
  }

  /** The methods of a type that can be named without being called, as in Position::held. */
  List<Completion> references(Meaning of, Forms forms) {
    forms.of(of.type()).stream()
        .filter(form -> !isOfEveryObject(form))
        .forEach(form -> add(OTHER, form.name(), Terms.form(form), abouts.of(form)));
    if (of.namesType()) {
      add(OTHER, "new", "", "makes a value of the class");
    }
    return ranked(false);
  }

  private static boolean isOfEveryObject(Form form) {
    return form.origin()
        .filter(origin -> origin instanceof java.lang.reflect.Method)
        .filter(origin -> Types.isOfEveryObject((java.lang.reflect.Method) origin))
        .isPresent();
  }

  /** The names that can stand here. */
  List<Completion> names(List<String> typeNames) {
    Scope scope = place.scope();
    if (!place.followsValue()) {
      addOwn(scope);
      scope
          .methods()
          .values()
          .forEach(forms -> addForms(forms, fitsAny(forms) ? MADE_BY_OWN : OTHER));
      scope
          .words()
          .methods()
          .forEach((name, forms) -> addForms(forms, fitsAny(forms) ? FITTING : OTHER));
      scope.words().constants().values().forEach(this::addConstant);
      wanted.forEach(this::addByFullName);
      wanted.forEach(this::addLambda);
      addTypes(typeNames);
    }
    Keywords.at(place)
        .forEach(
            (word, about) -> {
              boolean truth = word.equals("true") || word.equals("false");
              boolean fits =
                  truth && wanted.stream().anyMatch(t -> Types.wrapped(t) == Boolean.class);
              boolean shown = !place.prefix().isEmpty() || place.isStatement() || fits;
              if (shown) {
                add(fits ? FITTING : OTHER, word, "", about);
              }
            });
    return ranked(true);
  }

  private void addOwn(Scope scope) {
    Map<String, Optional<Type>> own = new TreeMap<>(scope.own());
    place.beingDeclared().ifPresent(own::remove);
    own.forEach(
        (name, type) -> {
          boolean fits = type.isPresent() && fits(type.get());
          String term = type.map(Terms::of).orElse("");
          String about = type.map(abouts::ofType).orElse("");
          add(fits ? OWN : OTHER, name, term, about);
        });
    int added = 0;
    for (Map.Entry<String, Optional<Type>> each : own.entrySet()) {
      if (each.getValue().isPresent() && !fits(each.getValue().get()) && added < MOST_OF_OWN) {
        added += addOfOwn(each.getKey(), each.getValue().get());
      }
    }
  }

  /** What a value of the user gives when asked without further words, as in pull.start(). */
  private int addOfOwn(String name, Type type) {
    if (Types.raw(type).getName().startsWith("java.")) {
      return 0;
    }
    List<Form> giving =
        abouts.forms().of(type).stream()
            .filter(form -> form.parameters().isEmpty() && !form.isStatic())
            .filter(form -> !isOfEveryObject(form) && isWorthAsking(form.gives()))
            .filter(form -> fits(form.gives()))
            .limit(MOST_OF_ONE)
            .toList();
    for (Form form : giving) {
      add(OF_OWN, name + "." + form.name() + "()", Terms.of(form.gives()), abouts.of(form));
    }
    return giving.size();
  }

  /** Numbers, texts and lists are everywhere: that some value gives one means nothing. */
  private static boolean isWorthAsking(Type type) {
    return !Types.raw(Types.wrapped(type)).getName().startsWith("java.");
  }

  private void addConstant(Field field) {
    Type type = field.getGenericType();
    add(fits(type) ? FITTING : OTHER, field.getName(), Terms.of(type), abouts.of(field));
  }

  /** Constants and makers that a wanted type itself has, where no word stands for them. */
  private void addByFullName(Type type) {
    Class<?> raw = Types.raw(type);
    Optional<String> name = place.scope().types().nameOf(raw);
    if (name.isEmpty() || raw.getName().startsWith("java.")) {
      return;
    }
    for (Field field : Forms.fields(raw)) {
      boolean constant = Modifier.isStatic(field.getModifiers()) && field.getType() == raw;
      if (constant && !place.scope().words().constants().containsKey(field.getName())) {
        String full = name.get() + "." + field.getName();
        add(BY_FULL_NAME, full, Terms.of(raw), abouts.of(field));
      }
    }
    boolean aWordMakesOne =
        place.scope().words().methods().values().stream()
            .flatMap(List::stream)
            .anyMatch(form -> Types.fits(type, form.gives()) && form.gives() != Object.class);
    if (!aWordMakesOne) {
      abouts.forms().of(raw).stream()
          .filter(form -> form.isStatic() && Types.raw(form.gives()) == raw && !raw.isEnum())
          .collect(Collectors.groupingBy(Form::name, TreeMap::new, Collectors.toList()))
          .forEach((maker, forms) -> addForms(forms, BY_FULL_NAME, name.get() + "."));
    }
  }

  private void addLambda(Type type) {
    Terms.takenByLambda(type)
        .ifPresent(
            taken ->
                add(
                    MADE_BY_OWN,
                    taken + " -> ",
                    Terms.of(type),
                    "what is to be done with each value"));
  }

  private void addTypes(List<String> typeNames) {
    String prefix = place.prefix();
    for (String name : typeNames) {
      boolean begun = !prefix.isEmpty() && startsAlike(name, prefix);
      if (begun) {
        Optional<Class<?>> type = place.scope().types().named(name);
        add(OTHER, name, type.map(t -> kind(t)).orElse(""), type.map(abouts::of).orElse(""));
      }
    }
  }

  private static String kind(Class<?> type) {
    return type.isEnum() ? "list of names" : type.isInterface() ? "interface" : "class";
  }

  private boolean fits(Type type) {
    return type != void.class && wanted.stream().anyMatch(each -> Types.fits(each, type));
  }

  private boolean fitsAny(List<Form> forms) {
    return forms.stream().anyMatch(form -> fits(form.gives()));
  }

  private void addForms(List<Form> forms, int rank) {
    addForms(forms, rank, "");
  }

  private void addForms(List<Form> forms, int rank, String before) {
    Form first = forms.stream().filter(form -> fits(form.gives())).findFirst().orElse(forms.get(0));
    boolean empty = forms.stream().allMatch(form -> form.parameters().isEmpty());
    String more = forms.size() > 1 ? " (and " + (forms.size() - 1) + " more)" : "";
    String text = before + first.name() + (empty ? "()" : "(");
    if (startsAlike(text, place.prefix())) {
      add(rank, text, Terms.form(first) + more, abouts.of(first));
    }
  }

  private void add(int rank, String text, String signature, String about) {
    if (startsAlike(text, place.prefix())) {
      offers.add(new Offer(rank, new Completion(from, text, signature, about)));
    }
  }

  private static boolean startsAlike(String text, String prefix) {
    return text.regionMatches(true, 0, prefix, 0, prefix.length());
  }

  /** In order; capitals count where anything is written just so. */
  private List<Completion> ranked(boolean names) {
    String prefix = place.prefix();
    boolean exact = offers.stream().anyMatch(o -> o.completion().text().startsWith(prefix));
    boolean fitting = names && prefix.isEmpty() && offers.stream().anyMatch(o -> o.rank() < OTHER);
    Map<String, Offer> kept = new LinkedHashMap<>();
    offers.stream()
        .filter(o -> !exact || o.completion().text().startsWith(prefix))
        // Where something fits and nothing is typed, what does not fit is only in the way.
        .filter(o -> !fitting || o.rank() < OTHER || isOwn(o.completion().text()))
        .sorted(Comparator.comparingInt(Offer::rank).thenComparing(o -> o.completion().text()))
        .forEach(o -> kept.putIfAbsent(o.completion().text(), o));
    return kept.values().stream().map(Offer::completion).toList();
  }

  private boolean isOwn(String text) {
    return place.scope().own().containsKey(text);
  }
}
