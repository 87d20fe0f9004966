package org.leverbook.figure;

import org.leverbook.display.Picture;

/**
 * A picture that is a drawing of ours, so that it can be taken apart and laid onto another page.
 */
interface Drawn extends Picture {

  /** What is on it. */
  Drawing drawing();

  /** With which it was laid out. */
  FigureStyle style();
}
