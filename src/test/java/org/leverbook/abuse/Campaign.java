package org.leverbook.abuse;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;

/**
 * How many odd inputs are tried, and what came of them.
 *
 * <p>The property {@code leverbook.abuse} is the size of the whole campaign over all kinds; each
 * kind has a share of it. Every seed is a test of its own, so that one that fails can be run alone.
 */
public final class Campaign {

  private static final int SIZE = Integer.getInteger("leverbook.abuse", 4_000);
  private static final int A_SEED = 25_000;

  private final String kind;
  private final Map<String, Integer> complaints = new LinkedHashMap<>();
  private final Map<String, Integer> counts = new LinkedHashMap<>();
  private final long began = System.nanoTime();

  /** A campaign of a kind of input. */
  public Campaign(String kind) {
    this.kind = kind;
  }

  /** The seeds for a share of the campaign, each good for some 25,000 inputs. */
  public static List<Long> seeds(double share) {
    long wanted = Math.max(1, Math.round(SIZE * share / A_SEED));
    return LongStream.rangeClosed(1, wanted).boxed().toList();
  }

  /** How many inputs each seed tries. */
  public static int perSeed(double share) {
    return (int) Math.max(1, Math.round(SIZE * share / seeds(share).size()));
  }

  /** One input came out so. */
  public void count(String outcome) {
    counts.merge(outcome, 1, Integer::sum);
  }

  /** Something that a user must not meet; the same trouble is told once. */
  public void complain(String trouble, String example) {
    boolean known = complaints.keySet().stream().anyMatch(c -> c.startsWith(trouble + " <- "));
    if (!known) {
      complaints.put(trouble + " <- " + example, 1);
    }
  }

  /** What is to be mended. */
  public List<String> complaints() {
    return new ArrayList<>(complaints.keySet());
  }

  /** Says what was tried. */
  public void tell(Object seed) {
    int all = counts.values().stream().mapToInt(Integer::intValue).sum();
    System.out.printf(
        java.util.Locale.ROOT,
        "abuse: %s, seed %s: %d inputs in %.0f s, %s, to mend: %d%n",
        kind,
        seed,
        all,
        (System.nanoTime() - began) / 1e9,
        counts,
        complaints.size());
    complaints.keySet().forEach(each -> System.out.println("to mend: " + each));
  }
}
