package org.tapeline.notify.channel;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A channel")
class ThrottleTest {
  private static final SendOutcome DOWN = new SendOutcome.Down("connect-failed");

  private final Hand clock = new Hand();
  private final Throttle throttle = new Throttle("mail", 10, Duration.ofSeconds(30), clock);

  private int takenIn(Duration time) {
    int taken = 0;
    Instant end = clock.instant().plus(time);
    while (clock.instant().isBefore(end)) {
      Duration wait = throttle.ask();
      if (wait.isZero()) {
        taken++;
        throttle.answered(SendOutcome.taken(), Duration.ofMillis(1));
      } else {
        clock.advance(wait);
      }
    }
    return taken;
  }

  private void fail(int times) {
    for (int i = 0; i < times; i++) {
      assertThat(throttle.ask()).isZero();
      throttle.answered(DOWN, Duration.ofMillis(1));
    }
  }

  @Test
  @DisplayName("sends no more than its rate, after a burst of one second")
  void rate() {
    assertThat(takenIn(Duration.ofSeconds(10))).isBetween(105, 111);
  }

  @Test
  @DisplayName("rests when five tries failed, tries with one, and rests again")
  void rests() {
    fail(5);
    assertThat(throttle.resting()).isTrue();
    assertThat(throttle.ask()).isPositive();
    clock.advance(Duration.ofSeconds(31));
    fail(1);
    assertThat(throttle.ask()).isPositive();
  }

  @Test
  @DisplayName("spends few tries in an hour away, and drains at its rate when it is back")
  void hourAway() {
    int tries = 0;
    Instant end = clock.instant().plus(Duration.ofHours(1));
    while (clock.instant().isBefore(end)) {
      Duration wait = throttle.ask();
      if (wait.isZero()) {
        tries++;
        throttle.answered(DOWN, Duration.ofMillis(1));
      } else {
        clock.advance(wait);
      }
    }
    assertThat(tries).isLessThanOrEqualTo(5 + 120);
    clock.advance(Duration.ofSeconds(31));
    assertThat(takenIn(Duration.ofSeconds(10))).isBetween(105, 111);
    assertThat(throttle.resting()).isFalse();
  }

  @Test
  @DisplayName("pauses as long as the server asks for, a quarter of an hour at most")
  void pauses() {
    assertThat(throttle.ask()).isZero();
    throttle.answered(new SendOutcome.Busy("429", Duration.ofSeconds(7)), Duration.ZERO);
    assertThat(throttle.ask()).isEqualTo(Duration.ofSeconds(7));
    clock.advance(Duration.ofSeconds(7));
    assertThat(throttle.ask()).isZero();
    throttle.answered(new SendOutcome.Busy("429", Duration.ofDays(7)), Duration.ZERO);
    assertThat(throttle.ask()).isEqualTo(Duration.ofMinutes(15));
  }

  @Test
  @DisplayName("does not rest for single messages that fail")
  void single() {
    for (int i = 0; i < 10; i++) {
      assertThat(throttle.ask()).isZero();
      throttle.answered(new SendOutcome.AddressRefused("550"), Duration.ZERO);
    }
    assertThat(throttle.resting()).isFalse();
  }

  @Test
  @DisplayName("that has nothing to send uses up nothing")
  void idle() {
    for (int i = 0; i < 100; i++) {
      assertThat(throttle.ask()).isZero();
      throttle.giveBack();
    }
  }

  /** A clock that stands until it is moved. */
  private static final class Hand extends Clock {
    private Instant now = Instant.parse("2025-09-12T17:00:00Z");

    void advance(Duration time) {
      now = now.plus(time);
    }

    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }
}
