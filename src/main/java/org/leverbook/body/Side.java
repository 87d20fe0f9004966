package org.leverbook.body;

import org.leverbook.quantity.Ask;

/** Which half of the body. */
public enum Side {
  /** The person's left: negative Z. */
  LEFT("left", -1),
  /** The person's right: positive Z. */
  RIGHT("right", 1),
  /** The midline: pelvis, spine, head. */
  MIDLINE("", 0);

  private final String word;
  private final int sign;

  Side(String word, int sign) {
    this.word = word;
    this.sign = sign;
  }

  /**
   * The side as a word.
   *
   * @return left, right, or an empty text for the midline
   */
  public String word() {
    return word;
  }

  /**
   * The side as the sign of its Z.
   *
   * @return -1 left, 1 right, 0 midline
   */
  public int sign() {
    return sign;
  }

  /**
   * A name with its side in front.
   *
   * @param name as in "thigh"
   * @return as in "right thigh"
   */
  public String of(String name) {
    Ask.present("name", name, "\"thigh\"");
    return word.isEmpty() ? name : word + " " + name;
  }
}
