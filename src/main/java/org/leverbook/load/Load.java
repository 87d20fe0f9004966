package org.leverbook.load;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.leverbook.pose.Accelerations;
import org.leverbook.pose.Placement;

/** Something that pulls or presses on the body by a law that depends on where the body is. */
public interface Load {

  /**
   * What a table calls it.
   *
   * @return as in "bar"
   */
  String source();

  /**
   * What it is, for a caption.
   *
   * @return as in "barbell 140 kg"
   */
  String description();

  /**
   * Its mass as far as it rests on the body.
   *
   * @return kilograms
   */
  double mass();

  /**
   * The forces on the body.
   *
   * @param where where the body is
   * @return one force for each place it acts on
   */
  List<Force> forces(Placement where);

  /**
   * The push it gives where the body may choose at which of several places to take it up. What it
   * tells here takes the place of its {@link #forces}, which then say what a coach would guess.
   *
   * @param where where the body is
   * @return the push; empty where there is no choice
   */
  default Optional<SharedPush> shared(Placement where) {
    return Optional.empty();
  }

  /**
   * The load as it is set for a body in this place: what a picture shows of it.
   *
   * @param where where the body is
   * @return itself, unless it is a machine that is set to the body
   */
  default Load setTo(Placement where) {
    return this;
  }

  /**
   * What a reader of the numbers must know of it besides.
   *
   * @return a sentence; empty where its description says all
   */
  default Optional<String> note() {
    return Optional.empty();
  }

  /**
   * How its force follows from where the body is, and who says so where it is not plain mechanics.
   *
   * @return a sentence for a method
   */
  default String law() {
    return "Its weight acts straight down where it is held, with the standard gravity of 9.80665"
        + " m/s².";
  }

  /**
   * The load while the body moves it, where its inertia is part of what the body shares out.
   *
   * @param moving how the body moves
   * @return the load at this instant
   */
  default Load moving(Accelerations moving) {
    return this;
  }

  /**
   * The same load, so many times as heavy or as strong: for finding the largest that can be held.
   *
   * @param factor zero or more
   * @return the changed load; empty where a load does not grow by itself
   */
  default Optional<Load> times(double factor) {
    return Optional.empty();
  }

  /**
   * Its size as a coach counts it: what is on the bar, the stack, the sled, the belt.
   *
   * @return kilograms; empty where it is not counted so
   */
  default OptionalDouble counted() {
    return OptionalDouble.empty();
  }

  /**
   * Whether its forces have the same size and direction in every pose and act at the same points of
   * their segments, as a bar's weight in the hands does. Grids of very many poses are then quick.
   *
   * @return false unless the load promises it
   */
  default boolean deadWeight() {
    return false;
  }

  /**
   * What its own mass sets against being moved, -m a. Unless a load knows better, its mass counts
   * as points that go with the places it acts on, divided between them as its force is; how a bar
   * resists being turned end over end is left out.
   *
   * @param moving how the body moves
   * @return one force for each place; none where it has no mass
   */
  default List<Force> inertia(Accelerations moving) {
    List<Force> forces = mass() == 0 ? List.of() : forces(moving.where());
    double all = forces.stream().mapToDouble(f -> f.force().getNorm()).sum();
    if (all == 0) {
      return List.of();
    }
    return forces.stream()
        .map(
            f -> {
              double share = mass() * f.force().getNorm() / all;
              return Inertia.force(
                  source(),
                  f.segment(),
                  f.point(),
                  moving.acceleration(f.segment(), f.point()).scalarMultiply(-share));
            })
        .toList();
  }
}
