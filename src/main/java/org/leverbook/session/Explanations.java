package org.leverbook.session;

import java.lang.reflect.Field;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is known of the word at a place: how it is called, and what is written about it. */
final class Explanations {

  private static final int WIDTH = 80;
  private static final String INDENT = "  ";

  private final Javadocs javadocs;
  private final boolean whole;

  /**
   * Explanations.
   *
   * @param javadocs what is written about our classes
   * @param whole whether to add it
   */
  Explanations(Javadocs javadocs, boolean whole) {
    this.javadocs = javadocs;
    this.whole = whole;
  }

  /** One for each signature of the word that a place ends with; empty where it is not known. */
  List<String> of(Place place, Expressions expressions) {
    String word = place.prefix();
    if (place.isStep()) {
      return place.receiver().map(of -> step(expressions, of, word)).orElse(List.of());
    }
    if (place.back(1).filter(token -> token.isWord("new")).isPresent()) {
      return place
          .scope()
          .types()
          .named(word)
          .map(type -> all(Forms.makers(type), false))
          .orElse(List.of());
    }
    return name(place.scope(), word);
  }

  private List<String> step(Expressions expressions, Meaning of, String word) {
    List<Form> forms = expressions.calls().ofValue(of, word);
    if (!forms.isEmpty()) {
      return all(forms, false);
    }
    Class<?> raw = Types.raw(of.type());
    Optional<Field> field = Expressions.field(raw, word);
    if (field.isPresent()) {
      return List.of(field(raw.getSimpleName() + "." + word, field.get()));
    }
    return expressions
        .calls()
        .field(of, word)
        .filter(Meaning::namesType)
        .map(inner -> List.of(type(Types.raw(inner.type()))))
        .orElse(List.of());
  }

  private List<String> name(Scope scope, String word) {
    Optional<Type> own = scope.own().getOrDefault(word, Optional.empty());
    if (own.isPresent()) {
      String said = word + ": " + Terms.java(own.get());
      return List.of(with(said, javadocs.of(Types.raw(own.get()))));
    }
    List<Form> forms = scope.forms(word);
    if (!forms.isEmpty()) {
      return all(forms, true);
    }
    Field constant = scope.words().constants().get(word);
    if (constant != null) {
      return List.of(field(word, constant));
    }
    Optional<Class<?>> type = scope.types().named(word).filter(named -> !named.isPrimitive());
    if (type.isPresent()) {
      return List.of(type(type.get()));
    }
    String keyword = Keywords.about(word);
    return keyword.isEmpty() ? List.of() : List.of(word + ": " + keyword + ".");
  }

  private String type(Class<?> type) {
    String kind = type.isRecord() ? "record" : type.isEnum() ? "enum" : "class";
    kind = type.isInterface() ? "interface" : kind;
    return with(kind + " " + Terms.java(type), javadocs.of(type));
  }

  private String field(String name, Field field) {
    return with(name + ": " + Terms.java(field.getGenericType()), javadocs.of(field));
  }

  private List<String> all(List<Form> forms, boolean word) {
    List<String> found = new ArrayList<>();
    for (Form form : forms) {
      Optional<Javadocs.Text> text = form.origin().flatMap(javadocs::of);
      if (whole && text.isEmpty() && isForeign(form)) {
        // The compiler may know more of what is not ours.
        return List.of();
      }
      found.add(with(Terms.signature(form, word), text));
    }
    return found.stream().distinct().toList();
  }

  private static boolean isForeign(Form form) {
    return form.owner() != null
        && !form.owner().getName().startsWith("org.leverbook.")
        && !Forms.isOfSession(form.owner());
  }

  private String with(String signature, Optional<Javadocs.Text> text) {
    if (!whole || text.isEmpty()) {
      return signature;
    }
    List<String> lines = new ArrayList<>(List.of(signature));
    text.get().description().forEach(line -> lines.add(wrapped(line, "")));
    List<String[]> tags = new ArrayList<>();
    for (String each : text.get().tags("@param")) {
      String[] parts = each.split(" ", 2);
      tags.add(new String[] {parts[0], parts.length > 1 ? parts[1] : ""});
    }
    text.get().tags("@return").forEach(each -> tags.add(new String[] {"gives", each}));
    text.get().tags("@throws").forEach(each -> tags.add(thrown(each)));
    int widest = tags.stream().mapToInt(tag -> tag[0].length()).max().orElse(0);
    if (!tags.isEmpty()) {
      lines.add("");
    }
    for (String[] tag : tags) {
      String name = INDENT + tag[0] + " ".repeat(widest - tag[0].length() + 2);
      lines.add(wrapped(name.replace(' ', '\u00a0') + tag[1], " ".repeat(name.length())));
    }
    return String.join("\n", lines).stripTrailing();
  }

  private static String[] thrown(String tag) {
    String[] parts = tag.split(" ", 2);
    String when = parts.length > 1 ? parts[1] : "";
    return new String[] {parts[0].equals("Refused") ? "refused" : "fails", when};
  }

  /** A paragraph in lines of a readable width; code stays together where it can. */
  private static String wrapped(String paragraph, String indent) {
    StringBuilder said = new StringBuilder();
    int column = 0;
    for (String word : paragraph.split(" ")) {
      if (column > 0 && column + 1 + word.length() > WIDTH) {
        said.append('\n').append(indent);
        column = indent.length();
      } else if (column > 0) {
        said.append(' ');
        column++;
      }
      said.append(word);
      column += word.length();
    }
    return Javadocs.plain(said.toString());
  }
}
