package org.leverbook.body;

/**
 * A published table of segment masses and centres of mass. One table serves the whole body; they
 * are never mixed.
 */
public enum SegmentTable {
  /**
   * De Leva (1996) J Biomech 29:1223-1230, Table 4: living young adults, men and women. The trunk
   * is divided into levels after Pearsall, Reid and Livingston (1996), scaled to de Leva's trunk.
   */
  DE_LEVA_1996("de Leva 1996, Table 4; trunk by level after Pearsall et al. 1996"),
  /**
   * Winter (2009), Table 4.1, going back to Dempster (1955): cadavers of older men, used for both
   * sexes. Its thigh ends at the hip and leaves the buttocks to the pelvis, so the low back carries
   * less.
   */
  WINTER_2009("Winter 2009, Table 4.1 (Dempster 1955); trunk by level after Pearsall et al. 1996");

  private final String source;

  SegmentTable(String source) {
    this.source = source;
  }

  /**
   * Where the numbers come from.
   *
   * @return authors, year, table
   */
  public String source() {
    return source;
  }
}
