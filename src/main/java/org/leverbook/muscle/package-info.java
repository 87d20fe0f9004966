/**
 * The muscles of a person: which joint each one crosses, with what arm, how strong it can pull.
 *
 * <p>The recipe:
 *
 * <ol>
 *   <li>{@code datasets/muscle} holds cross-section, stress and arms of a reference man (75 kg,
 *       1.75 m), each with its source and whether it was read or comes from memory.
 *   <li>An {@link org.leverbook.muscle.ArmCurve} makes a table of arms a smooth function of the
 *       joint's angle.
 *   <li>{@link org.leverbook.muscle.Scaling} fits areas and arms to a person.
 *   <li>{@link org.leverbook.muscle.Musculature} puts all muscles of both sides onto the axes of
 *       that person's joints: a row of arms for each axis, a column for each muscle.
 *   <li>{@link org.leverbook.muscle.Sharing} finds who pulls how hard, and what nobody can hold;
 *       {@code Effort} tells it for one pose, with what ligaments hold and what then presses in the
 *       joints.
 *   <li>{@link org.leverbook.muscle.Verdict} sums it up for a coach: each trade group of {@code
 *       verdict_groups.csv} in one word, and how sure that is.
 * </ol>
 *
 * <p>Sign by a worked case: the gluteus maximus extends the hip with an arm of 7.9 cm when
 * standing. The positive direction of the hip's flexion axis is flexion, so its arm there is -0.079
 * m: an arm is positive where the pull turns the joint in the axis' positive direction.
 *
 * <p>This room knows bodies and poses, no loads: what a joint asks comes in from below, by the
 * numbers.
 */
package org.leverbook.muscle;
