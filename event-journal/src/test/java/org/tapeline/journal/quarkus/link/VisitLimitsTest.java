package org.tapeline.journal.quarkus.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Visits to pages behind links")
class VisitLimitsTest {
  private final VisitLimits limits = new VisitLimits(5, 3);

  private boolean welcome(String address, String token) {
    return limits.visit(address, Optional.of(token)).isZero();
  }

  @Test
  @DisplayName("are limited for one token, wherever it is used")
  void byToken() {
    for (int i = 0; i < 3; i++) {
      assertThat(welcome("192.0.2." + i, "one")).isTrue();
    }
    assertThat(limits.visit("192.0.2.9", Optional.of("one")))
        .isPositive()
        .isLessThanOrEqualTo(Duration.ofMinutes(1));
    assertThat(welcome("192.0.2.9", "another")).isTrue();
  }

  @Test
  @DisplayName("are limited for one address, whatever it tries")
  void byAddress() {
    for (int i = 0; i < 5; i++) {
      assertThat(welcome("198.51.100.1", "guess " + i)).isTrue();
    }
    assertThat(welcome("198.51.100.1", "guess 6")).isFalse();
    assertThat(welcome("198.51.100.2", "guess 6")).isTrue();
  }

  @Test
  @DisplayName("count for a whole household of IPv6 addresses")
  void household() {
    assertThat(VisitLimits.network("2001:db8:1:2:3:4:5:6"))
        .isEqualTo(VisitLimits.network("2001:db8:1:2:0:0:0:9"))
        .isNotEqualTo(VisitLimits.network("2001:db8:1:3:3:4:5:6"));
    assertThat(VisitLimits.network("192.0.2.7")).isEqualTo("192.0.2.7");
  }
}
