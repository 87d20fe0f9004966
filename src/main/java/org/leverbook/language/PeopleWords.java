package org.leverbook.language;

import java.util.List;
import org.leverbook.body.Person;
import org.leverbook.body.Population;
import org.leverbook.body.Sex;

/** The words for groups of people; {@link Vocabulary} hands them on. */
public abstract sealed class PeopleWords extends SeriesWords permits CompareWords {

  PeopleWords() {}

  /**
   * Adults whose measures go together as in a survey.
   *
   * @param sex of all of them
   * @param count how many
   * @param seed the same seed gives the same people
   * @return the people
   * @throws org.leverbook.quantity.Refused if the count is not 1 to 1,000,000
   */
  public static List<Person> people(Sex sex, int count, long seed) {
    return Population.draw(sex, count, seed);
  }
}
