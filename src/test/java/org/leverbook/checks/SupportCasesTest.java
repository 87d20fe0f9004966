package org.leverbook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Published rows that need supports: the bands are the file's and are never widened here. */
class SupportCasesTest {

  @TestFactory
  Stream<DynamicTest> leverbook_gives_what_was_measured_or_follows_from_statics() {
    return SupportCases.rows().entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey(),
                    () -> {
                      PublishedRow row =
                          PublishedRow.all().stream()
                              .filter(r -> r.id().equals(one.getKey()))
                              .findFirst()
                              .orElseThrow();
                      double value = one.getValue().getAsDouble();
                      assertThat(value).as(row.toString()).isBetween(row.low(), row.high());
                    }));
  }

  @Test
  void four_rows_are_compared() {
    assertThat(SupportCases.rows()).hasSize(4);
  }
}
