package commonsheet.workbench.place;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToLongFunction;

/**
 * Keeps what was used last, up to a total size. Any number of threads may use it.
 *
 * @param <K> by what it is found
 * @param <V> what is kept
 */
final class RecentMap<K, V> {
  private final Map<K, V> kept = new LinkedHashMap<>(16, 0.75f, true);
  private final long most;
  private final ToLongFunction<V> size;
  private long total;

  /**
   * Keeps at most so much.
   *
   * @param most the total of the sizes
   * @param size of one; does not change
   */
  RecentMap(long most, ToLongFunction<V> size) {
    this.most = most;
    this.size = size;
  }

  /** What is kept under a key, which makes it the one used last; null for nothing. */
  synchronized V get(K key) {
    return kept.get(key);
  }

  /** Keeps something, and forgets what was not used for the longest time where it is too much. */
  synchronized void put(K key, V value) {
    V before = kept.put(key, value);
    total += size.applyAsLong(value) - (before == null ? 0 : size.applyAsLong(before));
    Iterator<V> oldest = kept.values().iterator();
    while (total > most && kept.size() > 1 && oldest.hasNext()) {
      total -= size.applyAsLong(oldest.next());
      oldest.remove();
    }
  }

  /** Forgets everything. */
  synchronized void clear() {
    kept.clear();
    total = 0;
  }
}
