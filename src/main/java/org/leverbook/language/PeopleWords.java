package org.leverbook.language;

import org.leverbook.body.Sex;
import org.leverbook.study.Club;
import org.leverbook.study.DrawnPeople;

/** The words for groups of people; {@link Vocabulary} hands them on. */
public abstract sealed class PeopleWords extends SeriesWords permits CompareWords {

  PeopleWords() {}

  /**
   * Adults whose measures go together as in a survey, as in {@code people(MALE, 100,
   * 1).longFor(THIGH, percent(90))}.
   *
   * @param sex of all of them
   * @param count how many
   * @param seed the same seed gives the same people
   * @return the people, each made when asked for
   * @throws org.leverbook.quantity.Refused if the count is not 1 to 1,000,000
   */
  public static DrawnPeople people(Sex sex, int count, long seed) {
    return DrawnPeople.of(sex, count, seed);
  }

  /**
   * Adults, half of them women unless {@code .women(percent(30))} says otherwise, as in {@code
   * people(200, 1)}.
   *
   * @param count how many
   * @param seed the same seed gives the same people
   * @return the people, each made when asked for
   * @throws org.leverbook.quantity.Refused if the count is not 1 to 1,000,000
   */
  public static DrawnPeople people(int count, long seed) {
    return DrawnPeople.of(count, seed);
  }

  /**
   * A club's list: a CSV file with the columns label, sex, mass (kg), stature (cm) and, if
   * measured, age, training and lengths such as thigh (cm); bad rows are kept out and told, as in
   * {@code lifters("notebooks/club.csv")}.
   *
   * @param file its name
   * @return the lifters
   * @throws org.leverbook.quantity.Refused if there is no such file, its header is not understood,
   *     or no row can be used
   */
  public static Club lifters(String file) {
    return Club.read(file);
  }
}
