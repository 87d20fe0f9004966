package org.leverbook.muscle;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One thing that a muscle can do: turn a joint in one direction.
 *
 * @param part which muscle or part of one
 * @param joint the joint or the region of the spine
 * @param action what it does there, as in "extend"
 * @param standing its arm in the anatomical position, metres; zero or less where it does not do
 *     this there
 * @param least its shortest arm where it does this, metres
 * @param most its longest arm, metres
 * @param at the angle of the longest arm, degrees; empty where one angle only is known
 * @param moment its greatest moment, one side, N·m; empty for the shoulder blade, which has no
 *     joint of its own in the body
 * @param status found, from memory, or partly
 * @param sources where the arms come from
 */
record Action(
    String part,
    String joint,
    String action,
    double standing,
    double least,
    double most,
    OptionalDouble at,
    OptionalDouble moment,
    String status,
    List<String> sources) {}
