package org.leverbook.figure;

/**
 * Sizes of letters, page units.
 *
 * @param title of the title
 * @param label of labels at the arms, axes and legends
 * @param caption of the sentences below
 * @param fonts font stack of the SVG
 */
record Letters(double title, double label, double caption, String fonts) {

  Letters times(double factor) {
    return new Letters(factor * title, factor * label, factor * caption, fonts);
  }

  Letters in(String stack) {
    return new Letters(title, label, caption, stack);
  }
}
