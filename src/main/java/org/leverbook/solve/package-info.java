/**
 * From what a coach says to joint angles: conditions that must be met, wishes that are met as well
 * as they can be, and the ranges of the joints.
 *
 * <p>{@link org.leverbook.solve.Coordinates} are the few numbers that a pose of a lift is made of
 * (both knees alike, a spine that shares its bend over its levels). {@link
 * org.leverbook.solve.Statements} collects what is said about them; {@link
 * org.leverbook.solve.PoseSolver} finds the pose, or tells which conditions miss, by how much, and
 * which range stops them. It knows bodies and poses; of loads and lifts it knows nothing.
 */
package org.leverbook.solve;
