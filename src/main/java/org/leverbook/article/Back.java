package org.leverbook.article;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.leverbook.data.Version;
import org.leverbook.study.ClaimAnswer;
import org.leverbook.study.Doubt;
import org.leverbook.study.DrawnPeople;

/**
 * What stands behind the text: the method, what could not be traced, and what it takes to make the
 * article again.
 *
 * @param method of all that was used
 * @param untraced numbers of figures and tables that do not tell what they were made of
 * @param versions of program and Java, and the seeds
 * @param code that made it; empty where no door keeps a record
 */
record Back(Method method, List<String> untraced, String versions, Optional<String> code) {

  static final String KEEP =
      "No record of the code was kept here: keep the script beside the article; run again, it gives"
          + " the same numbers.";

  static final String AGAIN = "The same code gives the same numbers, on any machine:";

  static Back of(Article article, List<Object> values) {
    Used used = Used.of(values);
    return new Back(Method.of(used), untraced(article), versions(used), Reproduction.code());
  }

  /** A sentence about what could not be traced; empty where all could. */
  Optional<String> untracedSentence() {
    return untraced.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "What " + String.join(", ", untraced) + " was made of is not recorded in it.");
  }

  private static List<String> untraced(Article article) {
    Numbering numbers = article.numbering();
    List<String> untraced = new ArrayList<>();
    for (Part part : article.parts()) {
      boolean bare =
          part instanceof Part.Tabled tabled && !Used.tells(tabled.sheet())
              || part instanceof Part.Pictured pictured && !Used.tells(pictured.picture());
      if (bare) {
        untraced.add(numbers.of(part).word());
      }
    }
    return untraced;
  }

  private static String versions(Used used) {
    Set<String> seeds = new LinkedHashSet<>();
    for (Object study : used.studies()) {
      if (study instanceof DrawnPeople people) {
        seeds.add(people.title());
      } else if (study instanceof Doubt doubt) {
        seeds.add("doubt, seed " + doubt.seed());
      } else if (study instanceof ClaimAnswer answer
          && answer.people() instanceof DrawnPeople people) {
        seeds.add(people.title());
      }
    }
    String versions =
        String.format(
            Locale.ROOT, "Leverbook %s, Java %d.", Version.number(), Runtime.version().feature());
    return seeds.isEmpty() ? versions : versions + " Drawn: " + String.join("; ", seeds) + ".";
  }
}
