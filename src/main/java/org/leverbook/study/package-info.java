/**
 * Many positions in one table.
 *
 * <p>A {@link org.leverbook.study.Sweep} varies one quantity over a range, asks a lambda for the
 * position at each value, in parallel, and keeps every row: what cannot be reached or held stays
 * with its reason. A {@link org.leverbook.study.Grid} does so with two quantities against each
 * other; a {@link org.leverbook.study.PoseGrid} is the fast path for millions of given poses
 * without supports. An {@link org.leverbook.study.Optimum} finds the setting, or the pair of
 * settings, that makes a quantity lowest or highest under limits; a {@link
 * org.leverbook.study.TradeOff} shows what two quantities cost each other; {@link
 * org.leverbook.study.TableFiles} puts tables into CSV and JSON files and gets them back equal.
 * Tables are Tablesaw's, with the unit in every column's name. This is the first room that knows
 * Tablesaw.
 */
package org.leverbook.study;
