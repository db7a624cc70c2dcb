package org.tapeline.notify.phone;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A telephone number")
class TelephoneTest {

  @Test
  @DisplayName("is read as people write it, and called by its digits")
  void shown() {
    assertThat(Telephone.of("+15005550101"))
        .contains(new Telephone("tel:+15005550101", "+1 500-555-0101"));
  }

  @Test
  @DisplayName("that the library does not know is shown as it came")
  void unknown() {
    assertThat(Telephone.of("555 0101")).contains(new Telephone("tel:5550101", "555 0101"));
    assertThat(Telephone.of("ask her sister")).isEmpty();
  }

  @Test
  @DisplayName("counts as E.164 with its country's code alone")
  void e164() {
    assertThat(Telephone.isE164("+15005550101")).isTrue();
    assertThat(Telephone.isE164("5005550101")).isFalse();
    assertThat(Telephone.isE164("+1 500 555 0101")).isFalse();
    assertThat(Telephone.isE164("+1")).isFalse();
  }
}
