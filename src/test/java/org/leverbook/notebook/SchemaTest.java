package org.leverbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The yardstick itself: it must say no to what is wrong. */
class SchemaTest {

  @Test
  void a_missing_id_and_a_result_without_a_number_are_seen() {
    String good = Notebook.of(List.of("1"), "").text();
    assertThat(Schema.complaints(good)).isEmpty();

    assertThat(Schema.complaints(good.replaceFirst("\"id\": \"[^\"]*\",", ""))).isNotEmpty();
    assertThat(Schema.complaints(good.replace("\"outputs\": []", "\"outputs\": [{}]")))
        .isNotEmpty();
  }
}
