package org.leverbook.strength;

/**
 * What a strength rests on.
 *
 * @param source the authors and year, as in "Koski and McGill 1994"
 * @param status "found" in a public page, "from memory", or "found, shape from memory"
 * @param note what was assumed or is doubtful; empty where nothing is
 */
public record Evidence(String source, String status, String note) {

  /** Where nothing was measured. */
  static final Evidence NONE = new Evidence("", "not known", "");
}
