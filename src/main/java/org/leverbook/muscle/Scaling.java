package org.leverbook.muscle;

import java.util.Set;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.quantity.Si;

/**
 * From the reference man (75 kg, 1.75 m, 62 kg of them free of fat) to a person.
 *
 * <ul>
 *   <li>Arms grow with stature.
 *   <li>Cross-sections grow with the mass free of fat (volume with mass times stature, fibre length
 *       with stature: Handsfield et al. 2014, from memory), of which a {@link Person} tells
 *       nothing: a man is taken to have the reference man's share of 62/75, a woman 0.73 of her
 *       mass (assumption, from memory).
 *   <li>Women's muscles of the upper limb are smaller still: 0.60 of a man's where those of the
 *       lower limb are 0.72 (from memory).
 * </ul>
 *
 * <p>A heavy person is thus taken to be a muscular one; a fat one gets too much.
 *
 * @param arm factor on every arm
 * @param upper factor on cross-sections of shoulder girdle, shoulder, arm and forearm
 * @param lower factor on cross-sections of trunk, neck, hip, thigh and leg
 */
public record Scaling(double arm, double upper, double lower) {

  /** The reference man as he is. */
  public static final Scaling NONE = new Scaling(1, 1, 1);

  private static final double REFERENCE_STATURE = 1.75;
  private static final double REFERENCE_LEAN = 62;
  private static final double LEAN_MAN = 62.0 / 75;
  private static final double LEAN_WOMAN = 0.73;
  private static final double WOMAN_UPPER = 0.60;
  private static final double WOMAN_LOWER = 0.72;
  private static final Set<String> UPPER = Set.of("shoulder girdle", "shoulder", "arm", "forearm");

  /**
   * The factors of a person.
   *
   * @param person who
   * @return the factors
   */
  public static Scaling of(Person person) {
    boolean woman = person.sex() == Sex.FEMALE;
    double lean = Si.kilograms(person.mass()) * (woman ? LEAN_WOMAN : LEAN_MAN);
    double area = lean / REFERENCE_LEAN;
    double arm = Si.metres(person.stature()) / REFERENCE_STATURE;
    return new Scaling(arm, woman ? area * WOMAN_UPPER / WOMAN_LOWER : area, area);
  }

  /**
   * The person's greatest pull of a muscle.
   *
   * @param muscle of the reference man
   * @return newtons, one side
   */
  public double maxForce(MuscleRow muscle) {
    return muscle.maxForce() * (UPPER.contains(muscle.region()) ? upper : lower);
  }
}
