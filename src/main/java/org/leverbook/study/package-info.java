/**
 * Many positions in one table.
 *
 * <p>A {@link org.leverbook.study.Sweep} varies one quantity over a range, asks a lambda for the
 * position at each value, in parallel, and keeps every row: what cannot be reached or held stays
 * with its reason. A {@link org.leverbook.study.Grid} does so with two quantities against each
 * other; a {@link org.leverbook.study.Comparison} sets given positions side by side, a {@link
 * org.leverbook.study.WayComparison} whole lifts; a {@link org.leverbook.study.PoseGrid} is the
 * fast path for millions of given poses without supports. Tables are Tablesaw's, with the unit in
 * every column's name. This is the first room that knows Tablesaw.
 */
package org.leverbook.study;
