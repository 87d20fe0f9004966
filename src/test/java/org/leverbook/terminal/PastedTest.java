package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Text from clipboards of all kinds. */
class PastedTest {

  @Test
  void line_ends_become_one_kind_and_what_no_one_sees_is_gone() {
    assertThat(Pasted.cleaned("a\r\nb\rc\n\n")).isEqualTo("a\nb\nc");
    assertThat(Pasted.cleaned("\ufeffkg(\u200b85)\u0007\u001b[2J")).isEqualTo("kg(85)[2J");
    assertThat(Pasted.cleaned("a\u00a0b\tc")).isEqualTo("a b\tc");
    assertThat(Pasted.cleaned("\n")).isEmpty();
    assertThat(Pasted.cleaned("\"N·m 💪\"")).isEqualTo("\"N·m 💪\"");
  }
}
