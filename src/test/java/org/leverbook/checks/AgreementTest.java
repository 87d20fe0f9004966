package org.leverbook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.leverbook.checks.Agreement.Line;
import org.leverbook.checks.Agreement.Outcome;

/**
 * What README, DEVELOPERS and {@code datasets/checks/agreement.csv} say of the agreement with
 * published work is what this build computes. With {@code -Dleverbook.agreement=write} the build
 * writes it anew.
 */
class AgreementTest {

  private static final Agreement AGREEMENT = Agreement.computed();

  private static final String BEGIN = "<!-- agreement: written by the build -->\n";

  private static final String END = "<!-- agreement: end -->\n";

  private static final String HOW =
      "mvn test -Dtest=AgreementTest -Dleverbook.agreement=write writes it anew";

  private static final boolean WRITE = "write".equals(System.getProperty("leverbook.agreement"));

  @Test
  void every_row_that_misses_is_listed_with_its_reason_and_no_other_row_is() {
    Set<String> missed = new TreeSet<>();
    AGREEMENT.with(Outcome.MISSES).forEach(line -> missed.add(line.row().id()));
    assertThat(missed).isEqualTo(new TreeSet<>(Disagreements.REASONS.keySet()));
  }

  @Test
  void every_published_row_is_compared_or_says_why_not() {
    assertThat(AGREEMENT.lines()).hasSize(PublishedRow.all().size());
    for (Line line : AGREEMENT.with(Outcome.NOT_COMPARED)) {
      assertThat(line.note()).as(line.row().id()).isNotEmpty();
    }
    for (Line line : AGREEMENT.lines()) {
      boolean listed = NotCompared.lists(line.row().id());
      assertThat(listed).as(line.row().id()).isEqualTo(line.answer().isEmpty());
    }
  }

  @Test
  void the_table_that_travels_is_what_this_build_computes() throws IOException {
    Path file = Path.of("datasets", "checks", "agreement.csv");
    String wanted = new AgreementPage(AGREEMENT).csv();
    if (WRITE) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, wanted, StandardCharsets.UTF_8);
    }
    same(file, Files.readString(file, StandardCharsets.UTF_8), wanted);
  }

  @Test
  void the_contributors_page_counts_the_agreement_source_by_source() throws IOException {
    between(Path.of("DEVELOPERS.md"), new AgreementPage(AGREEMENT).bySource());
  }

  @Test
  void the_readme_tells_how_many_published_rows_agree() throws IOException {
    between(Path.of("README.md"), new AgreementPage(AGREEMENT).inShort());
  }

  private static void between(Path page, String text) throws IOException {
    String now = Files.readString(page, StandardCharsets.UTF_8);
    assertThat(now).containsOnlyOnce(BEGIN).containsOnlyOnce(END);
    String head = now.substring(0, now.indexOf(BEGIN) + BEGIN.length());
    String written = head + "\n" + text + "\n" + now.substring(now.indexOf(END));
    if (WRITE) {
      Files.writeString(page, written, StandardCharsets.UTF_8);
    } else {
      same(page, now.substring(now.indexOf(BEGIN)), written.substring(written.indexOf(BEGIN)));
    }
  }

  /** The first line that differs is told, not two whole files. */
  private static void same(Path file, String now, String wanted) {
    Iterator<String> lines = now.lines().iterator();
    for (String line : wanted.lines().toList()) {
      assertThat(lines.hasNext() ? lines.next() : "").as(file + ": " + HOW).isEqualTo(line);
    }
    assertThat(now).as(file + ": " + HOW).hasSameSizeAs(wanted);
  }
}
