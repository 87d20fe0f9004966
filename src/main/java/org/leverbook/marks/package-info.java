/**
 * From a photo, or from landmarks in a table, to poses and positions.
 *
 * <p>A {@link org.leverbook.marks.Mark} says that a place of the body lies on a line of sight. The
 * joint angles are sought, within the ranges of the joints, that bring the body's own places
 * nearest to all lines: segment lengths are the person's, so a segment that looks short is turned
 * out of the picture by acos(seen / true). What one picture cannot tell (towards the camera or
 * away) comes out as two solutions to choose from.
 *
 * <p>Start at {@link org.leverbook.marks.Photo}.
 */
package org.leverbook.marks;
