package org.tapeline.fitting.helmet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The certification of a helmet ends")
class CertificationEndTest {
  private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

  private static Instant after(String lastDay, ZoneId field) {
    return CertificationEnd.after(LocalDate.parse(lastDay), field);
  }

  @Test
  @DisplayName("at midnight at the field, five hours after midnight UTC in summer, six in winter")
  void midnight() {
    assertThat(after("2026-08-31", CHICAGO)).isEqualTo("2026-09-01T05:00:00Z");
    assertThat(after("2026-12-31", CHICAGO)).isEqualTo("2027-01-01T06:00:00Z");
  }

  @Test
  @DisplayName("earlier at a field further east")
  void further() {
    assertThat(after("2026-08-31", ZoneId.of("America/New_York")))
        .isEqualTo("2026-09-01T04:00:00Z");
  }

  @Test
  @DisplayName("with the first moment of the day where the clock skips midnight")
  void noMidnight() {
    assertThat(after("2026-04-23", ZoneId.of("Africa/Cairo"))).isEqualTo("2026-04-23T22:00:00Z");
  }

  @Property(tries = 200)
  void theLastMomentIsStillOnTheLastDay(@ForAll @IntRange(min = 0, max = 4000) int day) {
    LocalDate last = LocalDate.parse("2024-01-01").plusDays(day);
    Instant end = CertificationEnd.after(last, CHICAGO);
    assertThat(LocalDate.ofInstant(end.minusMillis(1), CHICAGO)).isEqualTo(last);
    assertThat(LocalDate.ofInstant(end, CHICAGO)).isEqualTo(last.plusDays(1));
  }
}
