package org.leverbook.session;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The static words of a vocabulary by their names. */
final class StaticWords {

  private final Map<String, List<Form>> methods;
  private final Map<String, Field> constants = new TreeMap<>();

  /**
   * The words.
   *
   * @param vocabulary the classes that hold them
   */
  StaticWords(List<Class<?>> vocabulary) {
    methods =
        vocabulary.stream()
            .flatMap(type -> Arrays.stream(type.getMethods()))
            .filter(method -> Modifier.isStatic(method.getModifiers()))
            .map(method -> Forms.of(method, method.getDeclaringClass()))
            .collect(Collectors.groupingBy(Form::name, TreeMap::new, Collectors.toList()));
    for (Class<?> type : vocabulary) {
      for (Field field : type.getFields()) {
        if (Modifier.isStatic(field.getModifiers())) {
          constants.put(field.getName(), field);
        }
      }
    }
  }

  /** From the name of each word that is called to its forms. */
  Map<String, List<Form>> methods() {
    return methods;
  }

  /** The constants by their names. */
  Map<String, Field> constants() {
    return constants;
  }
}
