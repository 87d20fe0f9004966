package org.leverbook.abuse;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.stream.Collectors;

/** A call in words, for whoever mends it. */
final class Call {

  private Call() {}

  static String text(Object receiver, Method method, Object[] arguments) {
    return (receiver == null ? "" : brief(receiver) + ".")
        + method.getName()
        + Arrays.stream(arguments).map(Call::brief).collect(Collectors.joining(", ", "(", ")"));
  }

  private static String brief(Object value) {
    String text;
    try {
      text =
          value instanceof Object[] array
              ? Arrays.stream(array).map(Call::brief).collect(Collectors.joining(", ", "[", "]"))
              : value instanceof String s ? '"' + s + '"' : String.valueOf(value);
    } catch (RuntimeException | StackOverflowError e) {
      text = value.getClass().getSimpleName();
    }
    String line = text.replace("\n", "|").replace("\u0000", "\\0");
    return line.length() <= 70 ? line : line.substring(0, 70) + "…";
  }
}
