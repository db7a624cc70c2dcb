package org.tapeline.proof.faults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.proof.faults.strike.Kind;

@DisplayName("The options of a run with faults")
class OptionsTest {

  @Test
  @DisplayName("are five minutes of every kind when nothing is said")
  void defaults() {
    Options options = Options.of(List.of());
    assertThat(options.length()).isEqualTo(Duration.ofMinutes(5));
    assertThat(options.kinds()).containsExactly(Kind.values());
  }

  @Test
  @DisplayName("are taken as they are given")
  void given() {
    Options options =
        Options.of(List.of("--minutes", "0.5", "--seed", "7", "--kinds", "pause,kill-broker"));
    assertThat(options)
        .isEqualTo(new Options(Duration.ofSeconds(30), 7, List.of(Kind.PAUSE, Kind.KILL_BROKER)));
  }

  @Test
  @DisplayName("are refused in words when they are none")
  void refused() {
    assertThatThrownBy(() -> Options.of(List.of("--minutes", "long")))
        .hasMessageContaining("Not a number");
    assertThatThrownBy(() -> Options.of(List.of("--kinds", "flood")))
        .hasMessageContaining("No kind of fault: flood")
        .hasMessageContaining("kill-database");
    assertThatThrownBy(() -> Options.of(List.of("--fast"))).hasMessageContaining("--fast");
  }
}
