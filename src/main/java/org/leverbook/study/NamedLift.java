package org.leverbook.study;

import java.util.function.Function;
import org.leverbook.body.Person;
import org.leverbook.quantity.Ask;

/**
 * A lift of whoever is asked, with the name that tables give it.
 *
 * @param <L> what the lambda makes; usually a lift
 * @param name as in "low bar squat"
 * @param of from a person to the lift
 */
public record NamedLift<L>(String name, Function<Person, L> of) {

  /**
   * Checks that nothing is missing.
   *
   * @throws org.leverbook.quantity.Refused if something is
   */
  public NamedLift {
    Ask.present("lift's name", name, "\"low bar squat\"");
    Ask.present("lambda of " + name, of, "who -> backSquat(who)");
  }
}
