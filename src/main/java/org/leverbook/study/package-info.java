/**
 * Many positions in one table.
 *
 * <p>A {@link org.leverbook.study.Sweep} varies one quantity over a range, asks a lambda for the
 * position at each value, in parallel, and keeps every row: what cannot be reached or held stays
 * with its reason. Tables are Tablesaw's, with the unit in every column's name. This is the first
 * room that knows Tablesaw.
 */
package org.leverbook.study;
