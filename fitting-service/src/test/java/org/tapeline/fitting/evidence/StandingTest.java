package org.tapeline.fitting.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.evidence.PastSignOff.End;
import org.tapeline.fitting.signoff.SignOffEvent;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffLapsed;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffWithdrawn;
import org.tapeline.fitting.signoff.SignOffEvent.SignedOff;
import org.tapeline.fitting.signoff.WearState;

@DisplayName("A past sign-off")
class StandingTest {
  private static final Instant MONDAY = Instant.parse("2026-08-17T22:00:00Z");
  private static final Instant FRIDAY = Instant.parse("2026-08-21T22:00:00Z");
  private static final UUID PLAYER = UUID.randomUUID();
  private static final UUID FIRST = UUID.randomUUID();

  private static SignedOff signedOff(UUID session, String tag, Instant at) {
    return new SignedOff(
        PLAYER,
        session,
        tag,
        "model-a",
        "youth-medium",
        "NORTH",
        "fitter.north",
        SignOffEvent.Conditions.NOT_NOTED,
        "youth-football",
        2,
        at);
  }

  private static PastSignOff first(SignOffEvent... history) {
    return PastSignOff.of(List.of(history)).getFirst();
  }

  private static Optional<WearState> wear(String code, String reason) {
    return Optional.of(new WearState("", code, "", reason));
  }

  @Test
  @DisplayName("that nothing ended holds as far as the player may wear the helmet")
  void open() {
    Optional<PastSignOff> open = Optional.of(first(signedOff(FIRST, "LV0001", MONDAY)));
    assertThat(Standing.of(open, wear("may-wear", ""))).isEqualTo(new Standing.Holds(false));
    assertThat(Standing.of(open, wear("check-today", "due"))).isEqualTo(new Standing.Holds(true));
    assertThat(Standing.of(open, wear("do-not-wear", "handed back")))
        .isEqualTo(new Standing.DoesNotHold("handed back"));
  }

  @Test
  @DisplayName("is not known to hold when the picture is old, the player or the sign-off unknown")
  void unknown() {
    Optional<PastSignOff> open = Optional.of(first(signedOff(FIRST, "LV0001", MONDAY)));
    assertThat(Standing.of(open, wear("unknown", "Not known since 5:30 PM")))
        .isEqualTo(new Standing.NotKnown("Not known since 5:30 PM"));
    assertThat(Standing.of(open, wear("a state of tomorrow", "?")))
        .isInstanceOf(Standing.NotKnown.class);
    assertThat(Standing.of(open, Optional.empty())).isInstanceOf(Standing.NotKnown.class);
    assertThat(Standing.of(Optional.empty(), wear("may-wear", "")))
        .isInstanceOf(Standing.NotKnown.class);
  }

  @Test
  @DisplayName("ended with a withdrawal or a lapse, and why stays what it was")
  void ended() {
    PastSignOff withdrawn =
        first(
            signedOff(FIRST, "LV0001", MONDAY),
            new SignOffWithdrawn(PLAYER, "LV0001", "damage", FRIDAY),
            new SignOffWithdrawn(PLAYER, "LV0001", "hold", FRIDAY.plusSeconds(60)));
    assertThat(withdrawn.end()).contains(new End(FRIDAY, "damage"));
    assertThat(Standing.of(Optional.of(withdrawn), wear("may-wear", "")))
        .isEqualTo(new Standing.Ended(FRIDAY, "damage was found on the helmet"));
    assertThat(Standing.of(Optional.of(withdrawn), Optional.empty()))
        .isInstanceOf(Standing.Ended.class);
    PastSignOff lapsed =
        first(
            signedOff(FIRST, "LV0001", MONDAY),
            new SignOffLapsed(PLAYER, "LV0001", "recheck-overdue", FRIDAY));
    assertThat(lapsed.endSaid()).isEqualTo("recheck overdue");
  }

  @Test
  @DisplayName("ended when the player was fitted again, and the new one stands")
  void again() {
    List<PastSignOff> both =
        PastSignOff.of(
            List.of(
                signedOff(FIRST, "LV0001", MONDAY),
                signedOff(UUID.randomUUID(), "LV0002", FRIDAY)));
    assertThat(both.getFirst().end()).contains(new End(FRIDAY, PastSignOff.FITTED_AGAIN));
    assertThat(both.getLast().end()).isEmpty();
    assertThat(both.getLast().endSaid()).isEmpty();
  }
}
