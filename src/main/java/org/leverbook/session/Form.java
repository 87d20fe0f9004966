package org.leverbook.session;

import java.lang.reflect.Executable;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Optional;

/**
 * One way to call something.
 *
 * @param name what is called; a type's name where it is made by {@code new}
 * @param owner the class that declares it; null for a method of the session
 * @param parameters what it takes
 * @param varargs whether the last parameter may be given any number of times
 * @param gives what it returns
 * @param isStatic whether it needs no value to be asked
 * @param origin the method or constructor itself; empty for a method of the session
 */
record Form(
    String name,
    Class<?> owner,
    List<Parameter> parameters,
    boolean varargs,
    Type gives,
    boolean isStatic,
    Optional<Executable> origin) {

  /**
   * What a form takes at one place.
   *
   * @param name its name; empty where it is not known
   * @param type its type, an array for the last of a form that takes any number
   */
  record Parameter(String name, Type type) {}

  Form {
    parameters = List.copyOf(parameters);
  }

  /** Whether so many arguments are not too many. */
  boolean takes(int arguments) {
    return varargs || arguments <= parameters.size();
  }

  /** Whether so many arguments are neither too many nor too few. */
  boolean takesExactly(int arguments) {
    return varargs ? arguments >= parameters.size() - 1 : arguments == parameters.size();
  }

  /** The type that an argument at a place should have. */
  Optional<Type> typeAt(int place) {
    int last = parameters.size() - 1;
    if (place < last || place == last && !varargs) {
      return Optional.of(parameters.get(place).type());
    }
    return varargs ? Types.element(parameters.get(last).type()) : Optional.empty();
  }
}
