package org.leverbook.abuse;

import java.lang.reflect.Array;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Proxy;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import tech.units.indriya.quantity.Quantities;

/** Arguments that no one means: beyond limits, missing, of the wrong kind; and some good ones. */
final class Hostile {

  /** What a user's own code throws; that it comes through is right. */
  static final class Boom extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Boom() {
      super("The user's own code fails.");
    }
  }

  static final double[] NUMBERS = {
    0,
    -0.0,
    1,
    -1,
    0.5,
    2,
    3,
    7,
    25,
    60,
    85,
    140,
    178,
    1000,
    -60,
    1e-9,
    1e-300,
    Double.MIN_VALUE,
    1e9,
    1e18,
    1e308,
    -1e308,
    Double.MAX_VALUE,
    Double.NaN,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY
  };

  private static final int[] COUNTS = {
    0, 1, 2, 3, 5, 9, -1, -7, 100, 10_000, 1_000_000, Integer.MAX_VALUE, Integer.MIN_VALUE
  };

  private static final Unit<?>[] UNITS = {
    Units.KG,
    Units.LB,
    Units.M,
    Units.CM,
    Units.INCH,
    Units.MM,
    Units.DEG,
    Units.RAD,
    Units.N,
    Units.S,
    Units.PERCENT
  };

  private static final Map<String, Unit<?>[]> KINDS =
      Map.of(
          "Mass", new Unit<?>[] {Units.KG, Units.LB},
          "Length", new Unit<?>[] {Units.CM, Units.M, Units.INCH},
          "Angle", new Unit<?>[] {Units.DEG, Units.RAD},
          "Force", new Unit<?>[] {Units.N},
          "Time", new Unit<?>[] {Units.S},
          "Dimensionless", new Unit<?>[] {Units.PERCENT});

  private final Random random;
  private final Pool pool;
  private boolean odd;
  private boolean missing;
  private boolean thrown;

  Hostile(Random random, Pool pool) {
    this.random = random;
    this.pool = pool;
  }

  /** Arguments for a method. */
  Object[] arguments(Method method) {
    odd = false;
    missing = false;
    thrown = false;
    // Where every argument is odd the first one is refused and the others are never looked at.
    int worst = random.nextInt(3) == 0 ? Integer.MAX_VALUE : random.nextInt(8);
    Type[] types = method.getGenericParameterTypes();
    Object[] arguments = new Object[types.length];
    for (int i = 0; i < types.length; i++) {
      boolean hostile =
          worst == Integer.MAX_VALUE ? random.nextBoolean() : i == worst % types.length;
      arguments[i] = value(types[i], hostile && worst != 7, 0);
    }
    return arguments;
  }

  /** Whether an argument, or what a lambda gave, is no finite number. */
  boolean odd() {
    return odd;
  }

  /** Whether an argument, or what a lambda gave, is null. */
  boolean missing() {
    return missing;
  }

  /** Whether a lambda threw. */
  boolean thrown() {
    return thrown;
  }

  private Object value(Type type, boolean hostile, int depth) {
    Class<?> raw = raw(type);
    if (raw.isPrimitive() || Number.class.isAssignableFrom(raw) || raw == Boolean.class) {
      return number(raw, hostile);
    }
    if (hostile && random.nextInt(5) == 0) {
      missing = true;
      return null;
    }
    if (raw == String.class) {
      return hostile || random.nextInt(3) == 0
          ? OddTexts.ALL.get(random.nextInt(OddTexts.ALL.size()))
          : pool.text();
    }
    if (raw == Path.class) {
      return Path.of("some.csv");
    }
    if (raw.isEnum()) {
      return raw.getEnumConstants()[random.nextInt(raw.getEnumConstants().length)];
    }
    if (raw == Quantity.class) {
      return quantity(type, hostile);
    }
    if (raw == Vector3D.class) {
      return new Vector3D(coordinate(hostile), coordinate(hostile), coordinate(hostile));
    }
    if (raw == Vector2D.class) {
      return new Vector2D(coordinate(hostile), coordinate(hostile));
    }
    return composed(type, raw, hostile, depth);
  }

  private Object composed(Type type, Class<?> raw, boolean hostile, int depth) {
    if (raw.isArray()) {
      Type inner =
          type instanceof GenericArrayType g ? g.getGenericComponentType() : raw.componentType();
      int length = random.nextInt(4);
      Object array = Array.newInstance(raw.componentType(), length);
      for (int i = 0; i < length; i++) {
        Object element = value(inner, hostile && random.nextBoolean(), depth + 1);
        Array.set(array, i, element);
      }
      return array;
    }
    if (raw == List.class || raw == Iterable.class || raw == java.util.Collection.class) {
      return list(type, hostile, depth);
    }
    if (raw == Map.class) {
      Map<Object, Object> map = new LinkedHashMap<>();
      for (Object key : list(type, hostile, depth)) {
        map.put(key, OddTexts.ALL.get(random.nextInt(OddTexts.ALL.size())));
      }
      return map;
    }
    Object known = hostile && raw == Object.class ? pool.any() : pool.of(raw);
    if (known == null && raw.isInterface() && !raw.isSealed() && single(raw)) {
      return lambda(type, raw, hostile);
    }
    missing |= known == null;
    return known;
  }

  private List<Object> list(Type type, boolean hostile, int depth) {
    Type inner = type instanceof ParameterizedType p ? p.getActualTypeArguments()[0] : Object.class;
    int length = hostile ? random.nextInt(3) : 1 + random.nextInt(3);
    List<Object> list = new ArrayList<>();
    for (int i = 0; i < length && depth < 4; i++) {
      list.add(value(inner, hostile && random.nextBoolean(), depth + 1));
    }
    return random.nextBoolean() ? list : Collections.unmodifiableList(list);
  }

  private Object number(Class<?> raw, boolean hostile) {
    if (raw == boolean.class || raw == Boolean.class) {
      return random.nextBoolean();
    }
    if (raw == int.class || raw == Integer.class) {
      return hostile ? COUNTS[random.nextInt(COUNTS.length)] : 2 + random.nextInt(4);
    }
    if (raw == long.class || raw == Long.class) {
      return hostile ? random.nextLong() : (long) random.nextInt(100);
    }
    if (raw == byte.class) {
      return (byte) random.nextInt();
    }
    if (raw == char.class) {
      return (char) random.nextInt();
    }
    double number =
        hostile
            ? NUMBERS[random.nextInt(NUMBERS.length)]
            : random.nextInt(3) == 0 ? random.nextDouble() : random.nextInt(180);
    odd |= !Double.isFinite(number);
    return raw == float.class || raw == Float.class ? (Object) (float) number : (Object) number;
  }

  private double coordinate(boolean hostile) {
    double number =
        hostile && random.nextBoolean()
            ? NUMBERS[random.nextInt(NUMBERS.length)]
            : random.nextDouble() * 2;
    odd |= !Double.isFinite(number);
    return number;
  }

  private Object quantity(Type type, boolean hostile) {
    Unit<?>[] units = UNITS;
    if (type instanceof ParameterizedType p
        && p.getActualTypeArguments()[0] instanceof Class<?> kind) {
      units = KINDS.getOrDefault(kind.getSimpleName(), UNITS);
    } else {
      units = new Unit<?>[] {UNITS[pool.unit() % UNITS.length]};
    }
    if (hostile && random.nextInt(4) == 0) {
      units = UNITS;
    }
    Unit<?> unit = units[random.nextInt(units.length)];
    double number =
        hostile
            ? NUMBERS[random.nextInt(NUMBERS.length)]
            : usual(unit) * (0.7 + 0.6 * random.nextDouble());
    // Quantities that are no finite number cannot be made, by whatever way.
    number = Double.isFinite(number) ? number : 0;
    return Quantities.getQuantity(number, unit);
  }

  private static double usual(Unit<?> unit) {
    if (unit.equals(Units.M)) {
      return 1;
    }
    if (unit.equals(Units.RAD)) {
      return 0.6;
    }
    return unit.equals(Units.S) ? 2 : unit.equals(Units.N) ? 200 : 60;
  }

  private static boolean single(Class<?> raw) {
    return Arrays.stream(raw.getMethods())
            .filter(m -> Modifier.isAbstract(m.getModifiers()))
            .count()
        == 1;
  }

  /** A lambda that gives good values, or throws, or gives null or an odd number. */
  private Object lambda(Type type, Class<?> raw, boolean hostile) {
    // Java's compiler sees to it that a lambda gives what it promises.
    Type[] promised =
        type instanceof ParameterizedType p ? p.getActualTypeArguments() : new Type[0];
    Class<?> promise =
        promised.length == 0 || promised[promised.length - 1] instanceof TypeVariable<?>
            ? Position.class
            : raw(promised[promised.length - 1]);
    int manner = hostile ? random.nextInt(6) : 5;
    long seed = random.nextLong();
    InvocationHandler handler =
        (proxy, method, given) -> {
          if (method.isDefault()) {
            return InvocationHandler.invokeDefault(proxy, method, given);
          }
          if (method.getDeclaringClass() == Object.class) {
            return method.getName().equals("equals")
                ? (Object) (proxy == given[0])
                : method.getName().equals("hashCode") ? (Object) 1 : "lambda";
          }
          return answer(method, promise, manner, seed);
        };
    return Proxy.newProxyInstance(Hostile.class.getClassLoader(), new Class<?>[] {raw}, handler);
  }

  private Object answer(Method method, Class<?> promise, int manner, long seed) {
    if (manner == 0) {
      thrown = true;
      throw new Boom();
    }
    Class<?> result = method.getReturnType();
    if (result == boolean.class) {
      return (seed & 1) == 0;
    }
    if (result == double.class) {
      odd |= manner == 1;
      return manner == 1
          ? Double.NaN
          : manner == 2 ? 1e308 : manner == 3 ? 0.0 : (seed & 255) / 8.0;
    }
    if (result == int.class) {
      return (int) (seed & 7);
    }
    if (result == void.class) {
      return null;
    }
    if (manner == 1) {
      missing = true;
      return null;
    }
    Object answer = pool.of(result == Object.class ? promise : result);
    missing |= answer == null;
    return answer;
  }

  static Class<?> raw(Type type) {
    if (type instanceof Class<?> c) {
      return c;
    }
    if (type instanceof ParameterizedType p) {
      return raw(p.getRawType());
    }
    if (type instanceof GenericArrayType g) {
      return Array.newInstance(raw(g.getGenericComponentType()), 0).getClass();
    }
    if (type instanceof TypeVariable<?> v) {
      return raw(v.getBounds()[0]);
    }
    return type instanceof WildcardType w ? raw(w.getUpperBounds()[0]) : Object.class;
  }
}
