package org.leverbook.figure;

/**
 * Sizes of letters, page units.
 *
 * @param title of the title
 * @param label of labels at the arms, axes and legends
 * @param caption of the sentences below
 * @param fonts font stack of the SVG
 */
record LetterSizes(double title, double label, double caption, String fonts) {

  LetterSizes times(double factor) {
    return new LetterSizes(factor * title, factor * label, factor * caption, fonts);
  }

  LetterSizes in(String stack) {
    return new LetterSizes(title, label, caption, stack);
  }
}
