package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.leverbook.body.JointId.HIP;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.study.ClaimsTest.crowd;
import static org.leverbook.study.ClaimsTest.hinge;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.statics.Position;

/** What a claim says where it cannot be tested, in part or at all. */
class ClaimRefusalsTest {

  private static final Claim CLAIM =
      Claim.of("the hip carries over 150 N·m").margin("N·m", p -> p.moment(HIP).size() - 150);

  private static void refused(ThrowingCallable asked, String sentence) {
    assertThatThrownBy(asked).isInstanceOf(Refused.class).hasMessage(sentence);
  }

  private static boolean heavy(Position p) {
    return Si.kilograms(p.body().person().mass()) > 80;
  }

  @Test
  void an_empty_group_a_missing_test_and_an_empty_sentence_are_refused() {
    refused(
        () -> CLAIM.over(List.<Person>of(), ClaimsTest::start),
        "The group of people is empty, so there is nobody to test the claim on: take a wider"
            + " filter, or people(FEMALE, 500, 1).");
    refused(
        () -> Claim.of("hips first").over(crowd(3), ClaimsTest::start),
        "The claim \"hips first\" has no test, so nothing says when it holds: add"
            + " .margin(\"N·m\", p -> p.moment(HIP).size() - 5 * p.moment(SHOULDER).size()) or"
            + " .that(p -> p.moment(HIP).size() > 200).");
    refused(
        () -> Claim.of(" "),
        "The claim's sentence is empty: say what is claimed, as in claim(\"higher hips lower the"
            + " knee moment\").");
    refused(
        () -> CLAIM.over(crowd(3), List.<NamedLift<Person>>of(), List.of()),
        "The list of lifts is empty: give one at least, as in List.of(liftOf(\"squat\", who ->"
            + " backSquat(who))).");
  }

  @Test
  void one_position_too_few_or_too_many_is_told() {
    refused(
        () -> CLAIM.over(crowd(3), ClaimsTest::start, ClaimsTest::start),
        "The claim \"the hip carries over 150 N·m\" looks at one position, but two were given for"
            + " each person: leave one out, or compare both, as in .that((a, b) -> …).");
    refused(
        () -> Claim.of("x").that((a, b) -> true).over(crowd(3), ClaimsTest::start),
        "The claim \"x\" compares two positions, but only one was given for each person: add a"
            + " second, as in .over(people, who -> …, who -> …).");
  }

  @Test
  void a_test_that_throws_for_some_is_counted_with_its_reason_and_the_rest_is_kept() {
    ClaimAnswer answer =
        Claim.of("fragile")
            .that(
                p -> {
                  if (heavy(p)) {
                    throw new IllegalStateException("too heavy for this sum");
                  }
                  return true;
                })
            .over(crowd(40), ClaimsTest::start);

    long heavy = crowd(40).stream().filter(who -> Si.kilograms(who.mass()) > 80).count();
    assertThat(heavy).isPositive();
    assertThat(answer.tested()).isEqualTo(40 - (int) heavy);
    assertThat(answer.share()).isEqualTo(1);
    assertThat(answer.text())
        .contains(
            heavy
                + " could not be tested; most frequent reason ("
                + heavy
                + "): The test failed: Illegal state exception: too heavy for this sum.\n");
  }

  @Test
  void a_margin_that_is_no_number_is_counted_and_the_rest_is_kept() {
    ClaimAnswer answer =
        Claim.of("divided")
            .margin("", p -> heavy(p) ? 0.0 / 0 : 1)
            .over(crowd(40), ClaimsTest::start);

    assertThat(answer.tested()).isBetween(1, 39);
    assertThat(answer.margins()).containsOnly(1);
    assertThat(answer.text())
        .contains("The margin came out as no number: is something divided by zero?");
  }

  @Test
  void who_cannot_get_there_is_told_apart_from_exceptions() {
    ClaimAnswer answer = CLAIM.over(crowd(60), who -> hinge(who).hipHeight(cm(51)).start());

    assertThat(answer.tested()).isBetween(1, 59);
    assertThat(answer.holding() + answer.exceptions()).isEqualTo(answer.tested());
    assertThat(answer.text())
        .contains(
            " cases that can be tested (of 60): ",
            " cannot be held; most frequent reason (",
            "A hip height of 51.0 cm would put the hips below the knees");
  }

  @Test
  void where_nobody_gets_there_the_answer_says_why() {
    ClaimAnswer answer = CLAIM.over(crowd(5), who -> hinge(who).hipHeight(cm(20)).start());

    assertThat(answer.text()).contains("Could be tested in none of 5 cases.");
    assertThatThrownBy(answer::share)
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith(
            "The claim \"the hip carries over 150 N·m\" could be tested in no case. Most frequent"
                + " reason: A hip height of 20.0 cm would put the hips below the knees");
    assertThatThrownBy(answer::picture).isInstanceOf(Refused.class);
    assertThat(CLAIM.over(crowd(2), who -> null).text())
        .contains("The lambda gave no position (null).");
  }

  @Test
  void stopped_in_the_middle_it_keeps_what_is_done() {
    AtomicInteger asked = new AtomicInteger();
    Thread asking = Thread.currentThread();
    ClaimAnswer answer;
    try {
      answer =
          CLAIM.over(
              crowd(5_000),
              who -> {
                if (asked.incrementAndGet() == 100) {
                  asking.interrupt();
                }
                return null;
              });
    } finally {
      // Cleared, so that later tests on this thread run.
      assertThat(Thread.interrupted()).isTrue();
    }
    assertThat(answer.cases()).isBetween(1, 4_999);
    assertThat(answer.text())
        .contains(String.format("Stopped after %,d of 5,000 cases", answer.cases()));
  }

  @Test
  void a_case_that_does_not_exist_names_those_that_do() {
    ClaimAnswer answer = CLAIM.over(crowd(4), ClaimsTest::start);
    refused(() -> answer.at(5), "There is no case 5: the cases are 1 to 4.");
    refused(
        () -> answer.save("cases.xlsx"),
        "A table is saved as .csv or .json, not as \"cases.xlsx\".");
  }
}
