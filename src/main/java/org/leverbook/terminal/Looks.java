package org.leverbook.terminal;

/**
 * How the shell is to look, as its user wishes. What the terminal cannot do is left out whatever
 * the wish.
 *
 * @param theme the colours
 * @param pictures whether pictures are shown in the terminal, besides being saved
 */
public record Looks(Theme theme, boolean pictures) {

  /** Where nobody said otherwise. */
  public static final Looks USUAL = new Looks(Theme.DARK, true);

  /** Colours by the background they are read on. */
  public enum Theme {
    /** For light letters on a dark background. */
    DARK,
    /** For dark letters on a light background. */
    LIGHT,
    /** No colours. */
    NONE
  }
}
