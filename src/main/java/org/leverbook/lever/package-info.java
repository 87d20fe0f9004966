/**
 * One joint as a lever drawn on a board: which pull holds it, and what that costs the joint.
 *
 * <p>A muscle is a straight {@link org.leverbook.lever.LineOfPull} between a point of one segment
 * and a point of another; it can only pull. {@link org.leverbook.lever.Opposition} finds how hard
 * one muscle, or several that share by strength, must pull against what {@code statics} found;
 * {@link org.leverbook.lever.JointContact} then tells with what force the bones press on each
 * other. Where muscles wrap around bone a straight line is too short an arm: lines are for the
 * lever as drawn; room {@code muscle} has the measured arms of a whole person.
 *
 * <p>Sign by a worked case: a level forearm with 40 N at 0.30 m and a biceps straight up at 0.05 m.
 * The load tends to extend the elbow with 12 N·m; the biceps pulls with 240 N; the upper arm
 * presses the forearm down with 200 N.
 */
package org.leverbook.lever;
