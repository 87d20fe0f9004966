/**
 * Many positions in one table.
 *
 * <p>A {@link org.leverbook.study.Sweep} varies one quantity over a range, asks a lambda for the
 * position at each value, in parallel, and keeps every row: what cannot be reached or held stays
 * with its reason. A {@link org.leverbook.study.Grid} does so with two quantities against each
 * other; a {@link org.leverbook.study.PoseGrid} is the fast path for millions of given poses
 * without supports. A {@link org.leverbook.study.Claim} is a sentence tested on many people, lifts
 * and settings; its answer keeps numbers, and makes the closest and the worst case anew. Tables are
 * Tablesaw's, with the unit in every column's name. This is the first room that knows Tablesaw.
 */
package org.leverbook.study;
