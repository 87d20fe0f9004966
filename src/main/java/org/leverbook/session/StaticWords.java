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

  private final List<Class<?>> vocabulary;
  private Map<String, List<Form>> methods;
  private Map<String, Field> constants;

  /**
   * The words; read when first asked for, since the first answer of a session needs none.
   *
   * @param vocabulary the classes that hold them
   */
  StaticWords(List<Class<?>> vocabulary) {
    this.vocabulary = vocabulary;
  }

  private synchronized void read() {
    if (methods != null) {
      return;
    }
    constants = new TreeMap<>();
    for (Class<?> type : vocabulary) {
      for (Field field : type.getFields()) {
        if (Modifier.isStatic(field.getModifiers())) {
          constants.put(field.getName(), field);
        }
      }
    }
    methods =
        vocabulary.stream()
            .flatMap(type -> Arrays.stream(type.getMethods()))
            .filter(method -> Modifier.isStatic(method.getModifiers()))
            .map(method -> Forms.of(method, method.getDeclaringClass()))
            .collect(Collectors.groupingBy(Form::name, TreeMap::new, Collectors.toList()));
  }

  /** From the name of each word that is called to its forms. */
  Map<String, List<Form>> methods() {
    read();
    return methods;
  }

  /** The constants by their names. */
  Map<String, Field> constants() {
    read();
    return constants;
  }
}
