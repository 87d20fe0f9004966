package org.leverbook.figure;

/**
 * What a picture of a position shows besides load, line of force and arms.
 *
 * @param reactions what supports give, as arrows to one scale
 * @param muscles lines coloured by effort
 * @param spine levels coloured by moment
 */
record Extras(boolean reactions, boolean muscles, boolean spine) {

  /** The plain picture. */
  static final Extras NONE = new Extras(false, false, false);
}
