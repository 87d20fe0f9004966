package org.leverbook.data;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * What was made lately, kept for the next one who asks for the same; the one not asked for longest
 * goes first. For several threads.
 *
 * @param <K> what is asked for
 * @param <V> what is made of it; always the same for the same question
 */
public final class Recent<K, V> {

  private final Map<K, V> known;
  private final Function<K, V> maker;

  /**
   * Nothing made yet.
   *
   * @param most how many are kept
   * @param maker makes one; may be called twice for the same where two threads ask at once
   */
  public Recent(int most, Function<K, V> maker) {
    this.maker = maker;
    known =
        new LinkedHashMap<>(2 * most, 0.75f, true) {
          private static final long serialVersionUID = 1;

          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
          }
        };
  }

  /**
   * The known one, or a new one.
   *
   * @param key what is asked for
   * @return what is made of it
   */
  public V get(K key) {
    synchronized (known) {
      V value = known.get(key);
      if (value != null) {
        return value;
      }
    }
    V made = maker.apply(key);
    synchronized (known) {
      V first = known.putIfAbsent(key, made);
      return first == null ? made : first;
    }
  }
}
