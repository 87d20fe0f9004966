package org.leverbook.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What our Javadoc says of classes and their members, from the texts that the build wrote. */
final class Javadocs {

  private static final String EXAMPLE = ", as in ";

  /** A longer sentence does not fit beside a word on a usual screen, in characters. */
  private static final int LONG = 80;

  private final Map<String, Map<String, Text>> known = new HashMap<>();

  /**
   * What is said of one class or member.
   *
   * @param lines the lines of the description, the first its first sentence, then those of the tags
   */
  record Text(List<String> lines) {

    /** The first sentence; a long one without its example, so that it fits on a line. */
    String first() {
      String first = lines.isEmpty() || lines.get(0).startsWith("@") ? "" : plain(lines.get(0));
      int example = first.indexOf(EXAMPLE);
      return example < 0 || first.length() <= LONG ? first : first.substring(0, example) + ".";
    }

    /** What a tag says; one line for each. */
    List<String> tags(String tag) {
      return lines.stream()
          .filter(line -> line.startsWith(tag + " "))
          .map(line -> line.substring(tag.length() + 1))
          .toList();
    }

    /** The description: a line for each paragraph, empty lines between. */
    List<String> description() {
      List<String> said = new ArrayList<>();
      for (String line : lines) {
        if (line.startsWith("@")) {
          break;
        }
        said.add(line);
      }
      // The first sentence stands apart in the file; what follows it goes on with it.
      if (said.size() > 1 && !said.get(1).isBlank() && !isItem(said.get(1))) {
        said.set(1, said.get(0) + " " + said.get(1));
        said.remove(0);
      }
      return said;
    }

    private static boolean isItem(String line) {
      return line.matches("(?:-|\\d+\\.) .*");
    }
  }

  /** A text without the marks that keep code together. */
  static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  /** What is said of a class. */
  Optional<Text> of(Class<?> type) {
    return Optional.ofNullable(texts(type).get(path(type)));
  }

  /** What is said of a field. */
  Optional<Text> of(Field field) {
    Class<?> owner = field.getDeclaringClass();
    return Optional.ofNullable(texts(owner).get(path(owner) + "#" + field.getName()));
  }

  /** What is said of a method or constructor, there or where it comes from. */
  Optional<Text> of(Executable member) {
    String name = member instanceof Constructor ? "new" : member.getName();
    String key =
        "#"
            + name
            + Arrays.stream(member.getParameterTypes())
                .map(Class::getSimpleName)
                .collect(Collectors.joining(",", "(", ")"));
    if (member instanceof Constructor) {
      Class<?> owner = member.getDeclaringClass();
      Text own = texts(owner).get(path(owner) + key);
      return own != null ? Optional.of(own) : owner.isRecord() ? of(owner) : Optional.empty();
    }
    Set<Class<?>> all = new LinkedHashSet<>();
    above(member.getDeclaringClass(), all);
    for (Class<?> each : all) {
      Text said = texts(each).get(path(each) + key);
      if (said != null) {
        return Optional.of(said);
      }
    }
    // Where a general parameter was narrowed down, its erased type differs.
    for (Class<?> each : all) {
      List<Text> alike = alike(each, "#" + name + "(", member.getParameterCount());
      if (alike.size() == 1) {
        return Optional.of(alike.get(0));
      }
    }
    return Optional.empty();
  }

  private List<Text> alike(Class<?> type, String begin, int parameters) {
    String start = path(type) + begin;
    return texts(type).entrySet().stream()
        .filter(each -> each.getKey().startsWith(start))
        .filter(each -> count(each.getKey().substring(start.length())) == parameters)
        .map(Map.Entry::getValue)
        .toList();
  }

  private static int count(String parameters) {
    return parameters.equals(")") ? 0 : parameters.split(",").length;
  }

  private static void above(Class<?> type, Set<Class<?>> all) {
    if (type == null || !all.add(type)) {
      return;
    }
    above(type.getSuperclass(), all);
    Arrays.stream(type.getInterfaces()).forEach(each -> above(each, all));
  }

  /** The name within the file of the outermost class. */
  private static String path(Class<?> type) {
    Class<?> outer = type.getDeclaringClass();
    return outer == null ? type.getSimpleName() : path(outer) + "." + type.getSimpleName();
  }

  private Map<String, Text> texts(Class<?> type) {
    Class<?> top = type;
    while (top.getDeclaringClass() != null) {
      top = top.getDeclaringClass();
    }
    return known.computeIfAbsent(top.getName(), Javadocs::read);
  }

  private static Map<String, Text> read(String name) {
    Map<String, Text> texts = new HashMap<>();
    if (!name.startsWith("org.leverbook.")) {
      return texts;
    }
    try (InputStream file = Javadocs.class.getResourceAsStream("javadoc/" + name + ".txt")) {
      if (file == null) {
        return texts;
      }
      List<String> lines = List.of();
      for (String line : new String(file.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
        if (line.startsWith(" ")) {
          lines.add(line.substring(1));
        } else {
          lines = new ArrayList<>();
          texts.put(line, new Text(lines));
        }
      }
      return texts;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
