package org.tapeline.fitting.helmet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A helmet kept for another player is in the database: see {@code whole/HelmetForAPlayerTest}. */
@DisplayName("A helmet that a fitter reaches for")
class HelmetCopyTest {
  private static final UUID PLAYER = UUID.randomUUID();
  private static final UUID OTHER = UUID.randomUUID();
  private static final LocalDate TODAY = LocalDate.parse("2026-08-01");

  private static HelmetCopy helmet(String state, UUID holder, LocalDate certifiedUntil) {
    HelmetCopy helmet = new HelmetCopy();
    helmet.state = state;
    helmet.holder = holder;
    helmet.certifiedUntil = certifiedUntil;
    return helmet;
  }

  @Test
  @DisplayName("and that this player has already is free for the player, and for nobody else")
  void issued() {
    HelmetCopy helmet = helmet("issued", OTHER, null);
    assertThat(helmet.refusalFor(OTHER, TODAY)).isEmpty();
    assertThat(helmet.refusalFor(PLAYER, TODAY).orElseThrow()).contains("another player has");
  }

  @Test
  @DisplayName("in quarantine, retired or in a state not heard of is for nobody")
  void outOfService() {
    assertThat(helmet("quarantined", null, null).refusalFor(PLAYER, TODAY).orElseThrow())
        .contains("quarantine");
    assertThat(helmet("retired", null, null).refusalFor(PLAYER, TODAY).orElseThrow())
        .contains("retired");
    assertThat(helmet("on-loan", null, null).refusalFor(PLAYER, TODAY).orElseThrow())
        .contains("not in service");
  }

  @Test
  @DisplayName("is certified on its last day, and the day after for nobody, not even its player")
  void certification() {
    assertThat(helmet("issued", PLAYER, TODAY).refusalFor(PLAYER, TODAY)).isEmpty();
    assertThat(helmet("issued", PLAYER, TODAY.minusDays(1)).refusalFor(PLAYER, TODAY).orElseThrow())
        .contains("2026-07-31");
  }
}
