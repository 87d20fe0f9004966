/**
 * Pictures that teach: a position drawn to scale, and the moments of a sweep as a plot.
 *
 * <p>A picture goes three steps, each apart from the others:
 *
 * <ol>
 *   <li>{@code Scene}: what is to be seen from the side or the front ({@code Sight}), in metres.
 *       The drawn arms are the projections of the true perpendicular arms.
 *   <li>{@code PositionPage}: where it goes on the page, in page units; a small search places the
 *       labels so that none overlaps another or leaves the page.
 *   <li>{@code SvgWriter} and {@code RasterPainter}: the same drawing as SVG or PNG.
 * </ol>
 *
 * <p>Colours, dashes, widths, sizes and the labels' language stand in {@code FigureStyle} alone; a
 * picture knows how to be drawn anew in another one ({@code styled}). The SVG of a position needs
 * no font of the machine and is the same everywhere. Plots are painted by XChart; {@code Charts}
 * has them all, each a {@code Plot} that hands out its chart for restyling. Start reading at {@link
 * org.leverbook.figure.FigureIllustrator}.
 *
 * <p>Several pictures become one by {@link org.leverbook.figure.PicturePage}: positions and charts
 * are laid out anew for their place, others are shrunk whole ({@code PagePart} and its kinds).
 */
package org.leverbook.figure;
