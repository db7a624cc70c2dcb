package org.tapeline.notify.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.notice.CauseName;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.notice.CauseTableFile;

@DisplayName("What a guardian of several children is told")
class HouseholdTest {
  private static final CauseTable TABLE = CauseTableFile.read();
  private static final Instant NOW = Instant.parse("2025-09-12T17:00:00Z");
  private static final Instant LATER = NOW.plusSeconds(2);

  private static Piece piece(int player, CauseName cause, boolean complete, Instant holdUntil) {
    UUID about = UUID.randomUUID();
    Step.Tell tell =
        new Step.Tell(
            cause,
            TABLE.of(cause).kind(),
            about,
            TABLE.of(cause).urgency().orElseThrow(),
            "words",
            List.of(about),
            Optional.empty(),
            Optional.empty());
    return new Piece(
        tell,
        new UUID(0, player),
        Optional.of(about),
        List.of(about),
        about,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        TABLE.of(cause).household(),
        complete,
        holdUntil);
  }

  private static Piece stop(int player, Instant holdUntil) {
    return piece(player, CauseName.REFIT_DO_NOT_WEAR, true, holdUntil);
  }

  @Test
  @DisplayName("of an only child goes out at once when nothing more is awaited")
  void onlyChild() {
    Piece mia = stop(1, LATER);
    assertThat(Household.now(List.of(mia), 1, NOW)).containsExactly(List.of(mia));
    Piece incomplete = piece(1, CauseName.RECHECK_DUE, false, LATER);
    assertThat(Household.now(List.of(incomplete), 1, NOW)).isEmpty();
    assertThat(Household.now(List.of(incomplete), 1, LATER)).hasSize(1);
  }

  @Test
  @DisplayName("waits for the other children as long as the window, and no longer")
  void waits() {
    Piece mia = stop(1, LATER);
    assertThat(Household.now(List.of(mia), 2, NOW)).isEmpty();
    assertThat(Household.now(List.of(mia), 2, LATER)).containsExactly(List.of(mia));
  }

  @Test
  @DisplayName("is one notice for all that is ready when the first wait is over, or all are ready")
  void together() {
    Piece mia = stop(1, LATER);
    Piece leo = stop(2, LATER.plusSeconds(1));
    assertThat(Household.now(List.of(mia, leo), 2, NOW)).containsExactly(List.of(mia, leo));
    assertThat(Household.now(List.of(mia, leo), 3, NOW)).isEmpty();
    assertThat(Household.now(List.of(mia, leo), 3, LATER)).containsExactly(List.of(mia, leo));
  }

  @Test
  @DisplayName("is a notice of its own for each kind, and for each correction")
  void apart() {
    Piece mia = stop(1, NOW);
    Piece leo = piece(2, CauseName.REFIT_SOON, true, NOW);
    Piece fitted = piece(3, CauseName.REFIT_PASSED, true, LATER);
    Piece again = piece(2, CauseName.REFIT_PASSED, true, LATER);
    assertThat(Household.now(List.of(fitted, mia, leo, again), 3, NOW))
        .containsExactlyInAnyOrder(List.of(fitted), List.of(again), List.of(mia), List.of(leo));
  }
}
