package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("When something that a phone sends later was done")
class EnteredAtTest {
  private static final Instant ARRIVED = Instant.parse("2026-08-01T15:06:00Z");

  private static Instant of(Instant entered) {
    return EnteredAt.of(Optional.of(entered), ARRIVED);
  }

  @Test
  @DisplayName("is what the phone noted, up to three days back")
  void noted() {
    assertThat(of(ARRIVED)).isEqualTo(ARRIVED);
    assertThat(of(ARRIVED.minusSeconds(90))).isEqualTo(ARRIVED.minusSeconds(90));
    Instant threeDays = ARRIVED.minus(Duration.ofHours(72));
    assertThat(of(threeDays)).isEqualTo(threeDays);
  }

  @Test
  @DisplayName("is the moment of arrival where the phone's clock cannot be right")
  void wrongClock() {
    assertThat(of(ARRIVED.plusMillis(1))).isEqualTo(ARRIVED);
    assertThat(of(ARRIVED.minus(Duration.ofHours(72)).minusMillis(1))).isEqualTo(ARRIVED);
  }

  @Test
  @DisplayName("is the moment of arrival where nothing was noted")
  void nothing() {
    assertThat(EnteredAt.of(Optional.empty(), ARRIVED)).isEqualTo(ARRIVED);
  }
}
