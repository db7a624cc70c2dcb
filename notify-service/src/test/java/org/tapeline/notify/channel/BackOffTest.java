package org.tapeline.notify.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Back-off")
class BackOffTest {
  private static final Instant RAISED = Instant.parse("2025-09-12T17:00:00Z");
  private static final BackOff BACK_OFF =
      new BackOff(List.of(Duration.ofSeconds(2), Duration.ofMinutes(1)), Duration.ofHours(1));

  @Test
  @DisplayName("takes the waits in turn and repeats the last")
  void inTurn() {
    assertThat(BACK_OFF.next(1, RAISED, RAISED, 1)).contains(RAISED.plusSeconds(2));
    assertThat(BACK_OFF.next(2, RAISED, RAISED, 1)).contains(RAISED.plusSeconds(60));
    assertThat(BACK_OFF.next(9, RAISED, RAISED, 1)).contains(RAISED.plusSeconds(60));
  }

  @Test
  @DisplayName("spreads what failed together over the second half of a wait")
  void spreads() {
    assertThat(BACK_OFF.next(2, RAISED, RAISED, 0)).contains(RAISED.plusSeconds(30));
    assertThat(BACK_OFF.next(2, RAISED, RAISED, 0.5)).contains(RAISED.plusSeconds(45));
  }

  @Test
  @DisplayName("gives up when the next try would come too late")
  void givesUp() {
    assertThat(BACK_OFF.next(3, RAISED, RAISED.plusSeconds(3540), 1))
        .contains(RAISED.plusSeconds(3600));
    assertThat(BACK_OFF.next(3, RAISED, RAISED.plusSeconds(3541), 1)).isEmpty();
  }

  @Test
  @DisplayName("without a wait, or with a negative one, is refused")
  void refused() {
    Duration hour = Duration.ofHours(1);
    List<Duration> backwards = List.of(hour.negated());
    assertThatIllegalArgumentException().isThrownBy(() -> new BackOff(List.of(), hour));
    assertThatIllegalArgumentException().isThrownBy(() -> new BackOff(backwards, hour));
  }
}
