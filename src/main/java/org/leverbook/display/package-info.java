/**
 * How a value shows itself.
 *
 * <p>One interface, {@link org.leverbook.display.Shown}: text always, HTML, SVG and PNG where they
 * make sense. Values of other libraries get an adapter through the service {@link
 * org.leverbook.display.ShownAdapter}, so that the physics knows neither tables nor charts;
 * pictures of values come through the service {@link org.leverbook.display.Illustrator}. {@link
 * org.leverbook.display.OutputFolder} is the one place that decides where a saved file goes, and
 * writes it whole or not at all.
 */
package org.leverbook.display;
