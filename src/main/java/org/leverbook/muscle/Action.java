package org.leverbook.muscle;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One thing that a muscle, or several together, can do: turn a joint in one direction.
 *
 * <p>The arm of several is their moment over their force, each pulling as hard as it can: what one
 * muscle of that force would need.
 *
 * @param parts the muscles that do it somewhere
 * @param joint the joint or the region of the spine
 * @param action what they do there, as in "extend"
 * @param standing their arm in the anatomical position, metres; zero where they do not do this
 *     there
 * @param least their shortest arm, metres, over all listed angles or all levels of the region
 * @param most their longest arm, metres
 * @param at the angle of the greatest moment, degrees; empty where one angle only is known
 * @param moment their greatest moment, one side, N·m
 * @param counted whether the arms count in sums
 * @param status found, from memory, or partly
 * @param sources where the arms come from
 */
record Action(
    List<String> parts,
    String joint,
    String action,
    double standing,
    double least,
    double most,
    OptionalDouble at,
    double moment,
    boolean counted,
    String status,
    List<String> sources) {}
