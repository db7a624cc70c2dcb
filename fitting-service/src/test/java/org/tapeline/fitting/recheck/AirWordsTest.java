package org.tapeline.fitting.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.recheck.RecheckRules.Field;
import org.tapeline.fitting.recheck.RecheckRules.Fit;

@DisplayName("What the weather does to the liner")
class AirWordsTest {
  private static final Instant AT = Instant.parse("2026-08-01T15:00:00Z");

  private static Fit fit(Double celsius, Double metres) {
    return new Fit(AT, Optional.ofNullable(celsius), Optional.ofNullable(metres));
  }

  private static Field now(Double celsius, Double metres) {
    return new Field(Optional.ofNullable(celsius), Optional.of(AT), Optional.ofNullable(metres));
  }

  @Test
  @DisplayName("is said in numbers")
  void numbers() {
    assertThat(AirWords.said(fit(21.0, 240.0), now(4.0, 240.0)))
        .isEqualTo("Fitted at 21 °C and 240 m; now 4 °C at 240 m: the air takes 5.8 % less room.");
    assertThat(AirWords.said(fit(20.0, 0.0), now(-0.04, 1000.0))).contains("now 0 °C at 1000 m");
    assertThat(AirWords.said(fit(21.0, 240.0), now(33.5, 240.0)))
        .endsWith("now 33.5 °C at 240 m: the air takes 4.2 % more room.");
    assertThat(AirWords.said(fit(21.0, 240.0), now(21.0, 240.0))).endsWith("takes the same room.");
  }

  @Test
  @DisplayName("is not guessed where something was not recorded or is not known")
  void unknown() {
    assertThat(AirWords.said(fit(null, 240.0), now(4.0, 240.0)))
        .isEqualTo("The temperature at the fit was not recorded: check in cold or hot weather.");
    assertThat(AirWords.said(fit(21.0, null), now(null, 240.0)))
        .isEqualTo("Fitted at 21 °C. The temperature at the field is not known now.");
    assertThat(AirWords.said(fit(21.0, 240.0), now(4.0, null)))
        .endsWith("; now 4 °C. An altitude is not known: check in cold or hot weather.");
    assertThat(AirWords.sealed(fit(21.0, 240.0), now(4.0, null))).isEmpty();
  }

  @Test
  @DisplayName("has a bound: a sealed liner that cannot give")
  void sealed() {
    assertThat(AirWords.sealed(fit(21.0, 0.0), now(4.0, 0.0)))
        .hasValueSatisfying(
            said ->
                assertThat(said)
                    .contains("at 2.0 psi then, would read 1.0 psi (7.1 kPa) now")
                    .endsWith("A real liner gives, so it changes less."));
  }
}
