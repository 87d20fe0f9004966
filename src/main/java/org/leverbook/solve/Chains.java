package org.leverbook.solve;

import java.util.Map;
import java.util.TreeMap;
import org.leverbook.body.FlatTree;

/**
 * Which driven angle carries which, for one choice of coordinates: of a whole chain only the last
 * angle of each coordinate need be asked, because sums over a coordinate's angles are carried along
 * the chain.
 */
final class Chains {

  /** Angles that a coordinate drives, those that carry others first. */
  final int[] driven;

  /** The segment that hangs on an angle. */
  final int[] holder;

  /** The angle of the same coordinate that carries an angle next, or -1. */
  final int[] before;

  /** For an angle, the last one of each other coordinate that carries it. */
  final int[][] others;

  /** For a segment, the last angle of each coordinate that carries it. */
  final int[][] ends;

  Chains(FlatTree flat, int[] driver) {
    int[] first = flat.firstAngles();
    int[] parents = flat.parents();
    int[] list = new int[driver.length];
    int count = 0;
    holder = new int[driver.length];
    before = new int[driver.length];
    others = new int[driver.length][];
    ends = new int[parents.length][];
    ends[0] = new int[0];
    for (int s = 1; s < parents.length; s++) {
      Map<Integer, Integer> last = new TreeMap<>();
      for (int a : ends[parents[s]]) {
        last.put(driver[a], a);
      }
      for (int a = first[s]; a < first[s + 1]; a++) {
        holder[a] = s;
        if (driver[a] >= 0) {
          list[count++] = a;
          before[a] = last.getOrDefault(driver[a], -1);
          last.remove(driver[a]);
          others[a] = ints(last);
          last.put(driver[a], a);
        }
      }
      ends[s] = ints(last);
    }
    driven = java.util.Arrays.copyOf(list, count);
  }

  private static int[] ints(Map<Integer, Integer> last) {
    return last.values().stream().mapToInt(Integer::intValue).toArray();
  }
}
