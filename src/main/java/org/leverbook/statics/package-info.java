/**
 * Forces, balance, and the moment at every joint of a still position.
 *
 * <p>The recipe:
 *
 * <ol>
 *   <li>Gather the known forces: the weight of every segment and what the loads give ({@link
 *       org.leverbook.load.Force}).
 *   <li>Find what the supports must give so that forces and moments on the whole body cancel, and
 *       of all that do so within push-only and friction limits the least summed squared effort of
 *       the joints ({@code ContactProblem}, {@code LeastEffort}). Pads may be left untouched
 *       instead, or used in part. Where nothing balances, {@link org.leverbook.statics.Holding}
 *       says what is lacking, by how much.
 *   <li>Cut each joint in thought and add up what acts on everything distal to the cut: force and
 *       moment about the joint's centre, source by source ({@link org.leverbook.statics.NetLoads}).
 *   <li>Tell it the way a coach reasons ({@link org.leverbook.statics.JointMoment}): what the
 *       resistance tends to do, its size, its arm, which muscles oppose it, how much comes from
 *       each source.
 * </ol>
 *
 * <p>Sign by a worked case: a bar held in the hands in front of an upright trunk. Cut L5/S1: the
 * bar's force points down and lies ahead of the joint, so r x F points along -Z, which is the
 * positive direction of spinal flexion: the bar tends to flex the spine and the back extensors
 * oppose it. With 1000 N at 0.3 m the moment is 300 N·m. {@code NetLoadsTest} holds this very case.
 */
package org.leverbook.statics;
