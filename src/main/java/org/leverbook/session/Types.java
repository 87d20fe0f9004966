package org.leverbook.session;

import com.google.common.primitives.Primitives;
import com.google.common.reflect.TypeResolver;
import com.google.common.reflect.TypeToken;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What completion must know about types, beside what {@link TypeToken} knows. */
final class Types {

  private static final List<Class<?>> WIDENING =
      List.of(
          Byte.class,
          Short.class,
          Character.class,
          Integer.class,
          Long.class,
          Float.class,
          Double.class);

  private static final Set<String> OF_EVERY_OBJECT =
      Set.of("equals", "getClass", "hashCode", "notify", "notifyAll", "toString", "wait");

  private Types() {}

  /** The class behind a type, with neither arguments nor bounds. */
  static Class<?> raw(Type type) {
    return TypeToken.of(bound(type)).getRawType();
  }

  /** What can be asked of a type that is not exactly known: what it is at least. */
  static Type bound(Type type) {
    if (type instanceof WildcardType wildcard) {
      return bound(
          wildcard.getLowerBounds().length > 0
              ? wildcard.getLowerBounds()[0]
              : wildcard.getUpperBounds()[0]);
    }
    // A lift of any kind is bound by a lift of itself, and so on: the class is enough.
    return type instanceof TypeVariable<?> variable
        ? TypeToken.of(variable.getBounds()[0]).getRawType()
        : type;
  }

  /** A type without its primitive kind. */
  static Type wrapped(Type type) {
    return type instanceof Class<?> plain ? Primitives.wrap(plain) : type;
  }

  /** Whether a value of one type may stand where another is wanted. */
  static boolean fits(Type wanted, Type given) {
    if (given == void.class || wanted == void.class) {
      return false;
    }
    Type to = wrapped(wanted);
    Type from = wrapped(bound(given));
    if (WIDENING.contains(to) && WIDENING.contains(from)) {
      return WIDENING.indexOf(from) <= WIDENING.indexOf(to);
    }
    if (isOpen(to)) {
      return raw(to).isAssignableFrom(raw(from));
    }
    return TypeToken.of(to).isSupertypeOf(from)
        // A raw list may stand for any list.
        || from instanceof Class<?> plain
            && plain.getTypeParameters().length > 0
            && raw(to).isAssignableFrom(plain);
  }

  /** Whether a type names what is only known once it is called. */
  static boolean isOpen(Type type) {
    if (type instanceof ParameterizedType generic) {
      return Arrays.stream(generic.getActualTypeArguments()).anyMatch(Types::isOpen);
    }
    if (type instanceof GenericArrayType array) {
      return isOpen(array.getGenericComponentType());
    }
    if (type instanceof WildcardType wildcard) {
      return Arrays.stream(wildcard.getUpperBounds()).anyMatch(Types::isOpen)
          || Arrays.stream(wildcard.getLowerBounds()).anyMatch(Types::isOpen);
    }
    return type instanceof TypeVariable;
  }

  /** Whether a type says next to nothing of what is wanted. */
  static boolean saysNothing(Type type) {
    return type instanceof TypeVariable || type instanceof WildcardType || type == Object.class;
  }

  /** What an array or a collection holds. */
  static Optional<Type> element(Type type) {
    if (type instanceof GenericArrayType array) {
      return Optional.of(array.getGenericComponentType());
    }
    if (type instanceof Class<?> plain && plain.isArray()) {
      return Optional.of(plain.getComponentType());
    }
    if (!Iterable.class.isAssignableFrom(raw(type))) {
      return Optional.empty();
    }
    TypeToken<?> all = TypeToken.of(bound(type));
    return Optional.of(bound(all.resolveType(Iterable.class.getTypeParameters()[0]).getType()));
  }

  /** The one method that a lambda would stand for. */
  static Optional<Method> lambda(Type type) {
    Class<?> raw = raw(type);
    if (!raw.isInterface()) {
      return Optional.empty();
    }
    List<Method> open =
        Arrays.stream(raw.getMethods())
            .filter(m -> Modifier.isAbstract(m.getModifiers()) && !isOfEveryObject(m))
            .toList();
    return open.size() == 1 ? Optional.of(open.get(0)) : Optional.empty();
  }

  /** What a lambda of a type takes. */
  static List<Type> lambdaTakes(Type type, Method method) {
    TypeToken<?> of = TypeToken.of(type);
    return Arrays.stream(method.getGenericParameterTypes())
        .map(each -> plain(of.resolveType(each).getType()))
        .toList();
  }

  /** What a lambda of a type gives. */
  static Type lambdaGives(Type type, Method method) {
    Type gives = TypeToken.of(type).resolveType(method.getGenericReturnType()).getType();
    return plain(gives);
  }

  /** Without the question mark of an argument; a variable stays, to be found out. */
  private static Type plain(Type type) {
    if (type instanceof WildcardType wildcard) {
      return wildcard.getLowerBounds().length > 0
          ? wildcard.getLowerBounds()[0]
          : wildcard.getUpperBounds()[0];
    }
    // The resolver captures a wildcard as a variable of its own, bound as the wildcard was.
    return type instanceof TypeVariable<?> variable && variable.getName().startsWith("capture#")
        ? plain(variable.getBounds()[0])
        : type;
  }

  /** Learns what a form's variables stand for from an argument. */
  static TypeResolver learned(TypeResolver known, Type formal, Type actual) {
    Type open = plain(known.resolveType(formal));
    Type given = wrapped(bound(actual));
    if (!isOpen(open)) {
      return known;
    }
    if (open instanceof TypeVariable<?> variable) {
      return known.where(variable, given);
    }
    Optional<Type> element = element(given);
    if (open instanceof GenericArrayType array && element.isPresent()) {
      return learned(known, array.getGenericComponentType(), element.get());
    }
    TypeResolver more = known;
    if (open instanceof ParameterizedType generic
        && raw(generic).isAssignableFrom(raw(given))
        && supertype(given, raw(generic)) instanceof ParameterizedType same) {
      for (int i = 0; i < generic.getActualTypeArguments().length; i++) {
        Type argument = same.getActualTypeArguments()[i];
        if (!isOpen(argument)) {
          more = learned(more, generic.getActualTypeArguments()[i], argument);
        }
      }
    }
    return more;
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Type supertype(Type type, Class<?> raw) {
    return ((TypeToken) TypeToken.of(type)).getSupertype(raw).getType();
  }

  /** Whether every object has such a method. */
  static boolean isOfEveryObject(Method method) {
    return OF_EVERY_OBJECT.contains(method.getName())
        && Arrays.stream(Object.class.getMethods())
            .anyMatch(
                m ->
                    m.getName().equals(method.getName())
                        && Arrays.equals(m.getParameterTypes(), method.getParameterTypes()));
  }
}
