/**
 * Many positions in one table.
 *
 * <p>A {@link org.leverbook.study.Sweep} varies one quantity, tries one thing after another, or
 * runs through a lift; it asks a lambda for the position at each value, in parallel, and keeps
 * every row: what cannot be reached or held stays with its reason. A {@link
 * org.leverbook.study.Grid} does so with two quantities against each other, a {@link
 * org.leverbook.study.GridOfThree} with three; a {@link org.leverbook.study.ToFile} writes any
 * number of rows straight to a file; a {@link org.leverbook.study.PoseGrid} is the fast path for
 * millions of given poses without supports. All of them run on {@link org.leverbook.study.Many}: in
 * order, with a word to those who wait, and keeping what is done when the user stops. Tables are
 * Tablesaw's, with the unit in every column's name ({@link org.leverbook.study.ColumnNames}). This
 * is the first room that knows Tablesaw.
 *
 * <p>A {@link org.leverbook.study.Group} is people to try things on: {@link
 * org.leverbook.study.DrawnPeople} as a survey has them, or a {@link org.leverbook.study.Club} from
 * a list of measurements.
 *
 * <p>A {@link org.leverbook.study.Comparison} sets given positions side by side, a {@link
 * org.leverbook.study.WayComparison} whole lifts.
 *
 * <p>An {@link org.leverbook.study.Optimum} finds the setting, or the pair of settings, that makes
 * a quantity lowest or highest under limits; a {@link org.leverbook.study.TradeOff} shows what two
 * quantities cost each other; {@link org.leverbook.study.TableFiles} puts tables into CSV and JSON
 * files and gets them back equal.
 *
 * <p>A {@link org.leverbook.study.Claim} tests a sentence on many people, lifts and settings; a
 * {@link org.leverbook.study.Doubt} puts everything off that is not known exactly and says how far
 * an answer may be off, and from what.
 */
package org.leverbook.study;
