package org.leverbook.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.mm;

import org.junit.jupiter.api.Test;
import org.leverbook.quantity.Refused;

/** Loads by what is put together: discs on a bar, steel of a chain. */
class CountedInTheGymTest {

  @Test
  void a_bar_weighs_with_the_discs_of_both_ends() {
    // Rows D06a and D06b of checks/cases.csv.
    assertThat(Barbell.loaded(kg(25), kg(25), kg(25), kg(25)).mass()).isEqualTo(175);
    assertThat(Barbell.loaded(kg(20), kg(20), kg(10)).mass()).isEqualTo(80);
    assertThat(Barbell.loaded(kg(20)).mass()).isEqualTo(20);
  }

  @Test
  void a_disc_below_zero_is_refused() {
    assertThatThrownBy(() -> Barbell.loaded(kg(20), kg(-5)))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The disc's mass is -5 kg, but must lie between 0 and 50 kg. A mass cannot be"
                + " negative: is the minus a slip?");
  }

  @Test
  void a_chain_of_a_size_of_the_standard_weighs_what_the_standard_says() {
    // Rounding of the unit's factor only.
    assertThat(Chains.ofSteel(mm(8), cm(150)).perMetre()).isCloseTo(1.4, within(1e-12));
    assertThat(Chains.ofSteel(mm(13), cm(150)).perMetre()).isCloseTo(3.8, within(1e-12));
    assertThat(Chains.ofSteel(mm(16), cm(150)).perMetre()).isCloseTo(5.7, within(1e-12));
  }

  @Test
  void a_chain_between_two_sizes_weighs_between_them() {
    double between = Chains.ofSteel(mm(12), cm(150)).perMetre();
    assertThat(between).isBetween(2.7, 3.8);
  }

  @Test
  void a_load_prints_as_its_description() {
    assertThat(Chains.ofSteel(mm(13), cm(150)))
        .hasToString("chains, 3.8 kg a metre on each side, 1.50 m long");
  }
}
