package org.leverbook.session;

import com.google.common.reflect.TypeToken;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What can be asked of types: their methods, constructors and fields. */
final class Forms {

  private final Map<Type, List<Form>> known = new HashMap<>();

  /** All that can be asked of a value of a type, or of the type itself, by name. */
  List<Form> of(Type type) {
    return known.computeIfAbsent(type, Forms::read);
  }

  /** The forms of one name. */
  List<Form> named(Type type, String name) {
    return of(type).stream().filter(form -> form.name().equals(name)).toList();
  }

  private static List<Form> read(Type type) {
    Class<?> raw = Types.raw(type);
    Map<List<Object>, Method> methods = new LinkedHashMap<>();
    for (Method method : visible(raw)) {
      List<Object> key = new ArrayList<>(List.of(method.getName()));
      key.addAll(Arrays.asList(method.getParameterTypes()));
      methods.merge(key, method, Forms::closer);
    }
    // What the compiler generates to bridge a wider parameter is no form of its own.
    return methods.values().stream()
        .filter(method -> !method.isBridge())
        .sorted(
            Comparator.comparing(Method::getName)
                .thenComparing(Method::getParameterCount)
                .thenComparing(Method::toString))
        .map(method -> of(method, type))
        .toList();
  }

  private static List<Method> visible(Class<?> raw) {
    List<Method> all = new ArrayList<>(Arrays.asList(raw.getMethods()));
    if (isOfSession(raw)) {
      Arrays.stream(raw.getDeclaredMethods())
          .filter(m -> !Modifier.isPrivate(m.getModifiers()) && !m.isSynthetic())
          .forEach(all::add);
    }
    if (raw.isInterface()) {
      // What every object can be asked is no part of an interface; it is left out anyway.
      return all;
    }
    all.replaceAll(Forms::bridged);
    return all;
  }

  /** Classes declared in the session see each other's members that are not private. */
  static boolean isOfSession(Class<?> type) {
    return type.getClassLoader() instanceof SnippetLoader;
  }

  /** The method that the compiler made reachable from a public class. */
  private static Method bridged(Method method) {
    if (!method.isBridge()) {
      return method;
    }
    for (Class<?> above = method.getDeclaringClass().getSuperclass();
        above != null;
        above = above.getSuperclass()) {
      for (Method each : above.getDeclaredMethods()) {
        if (!each.isBridge()
            && each.getName().equals(method.getName())
            && each.getReturnType() == method.getReturnType()
            && Arrays.equals(each.getParameterTypes(), method.getParameterTypes())
            && Modifier.isPublic(each.getModifiers())
            && !Modifier.isPublic(above.getModifiers())) {
          return each;
        }
      }
    }
    return method;
  }

  private static Method closer(Method one, Method other) {
    if (one.isBridge() != other.isBridge()) {
      return one.isBridge() ? other : one;
    }
    return one.getReturnType().isAssignableFrom(other.getReturnType()) ? other : one;
  }

  /** A method as it is asked of a type. */
  static Form of(Method method, Type type) {
    boolean isStatic = Modifier.isStatic(method.getModifiers());
    Type gives = isStatic ? method.getGenericReturnType() : resolved(type, method);
    return new Form(
        method.getName(),
        method.getDeclaringClass(),
        parameters(method, isStatic ? method.getDeclaringClass() : type),
        method.isVarArgs(),
        gives,
        isStatic,
        Optional.of(method));
  }

  private static Type resolved(Type type, Method method) {
    if (method.getName().equals("getClass")) {
      return Class.class;
    }
    return TypeToken.of(Types.bound(type)).resolveType(method.getGenericReturnType()).getType();
  }

  /** The ways to make a value of a class by {@code new}. */
  static List<Form> makers(Class<?> type) {
    Constructor<?>[] all =
        isOfSession(type) ? type.getDeclaredConstructors() : type.getConstructors();
    return Arrays.stream(all)
        .filter(each -> !Modifier.isPrivate(each.getModifiers()) && !each.isSynthetic())
        .sorted(Comparator.comparing(Constructor::getParameterCount))
        .map(each -> made(each, type))
        .toList();
  }

  private static Form made(Constructor<?> maker, Class<?> type) {
    return new Form(
        type.getSimpleName(),
        type,
        parameters(maker, type),
        maker.isVarArgs(),
        type,
        true,
        Optional.of(maker));
  }

  private static List<Form.Parameter> parameters(Executable from, Type type) {
    Type[] types = from.getGenericParameterTypes();
    if (types.length != from.getParameterCount()) {
      types = from.getParameterTypes();
    }
    TypeToken<?> owner = TypeToken.of(Types.bound(type));
    List<Form.Parameter> parameters = new ArrayList<>();
    for (int i = 0; i < types.length; i++) {
      var parameter = from.getParameters()[i];
      String name = parameter.isNamePresent() ? parameter.getName() : "";
      parameters.add(new Form.Parameter(name, owner.resolveType(types[i]).getType()));
    }
    return parameters;
  }

  /** The fields of a class that may be seen. */
  static List<Field> fields(Class<?> type) {
    Field[] all = isOfSession(type) ? type.getDeclaredFields() : type.getFields();
    return Arrays.stream(all)
        .filter(field -> !Modifier.isPrivate(field.getModifiers()) && !field.isSynthetic())
        .toList();
  }
}
