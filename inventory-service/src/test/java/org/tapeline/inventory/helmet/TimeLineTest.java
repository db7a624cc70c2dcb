package org.tapeline.inventory.helmet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.helmet.HelmetFit.Kind;

@DisplayName("A helmet's time line")
class TimeLineTest {
  private static final Instant MORNING = Instant.parse("2026-08-01T09:00:00Z");
  private static final UUID PLAYER = UUID.fromString("0198f0c2-1111-7000-8000-000000000001");

  private static Instant after(int minutes) {
    return MORNING.plusSeconds(60L * minutes);
  }

  private static HelmetFit fit(Kind kind, String why, int minutes) {
    return new HelmetFit(kind, PLAYER, Optional.of("NORTH"), why, after(minutes));
  }

  @Test
  @DisplayName("tells fits and its own events in one order, the newest first")
  void oneOrder() {
    List<HelmetEvent> life =
        List.of(
            new HelmetEvent.HelmetReceived(
                "T",
                "model-a",
                "youth-small",
                "L",
                LocalDate.parse("2026-01-01"),
                Optional.of(LocalDate.parse("2027-08-01")),
                "DEPOT",
                MORNING),
            new HelmetEvent.HelmetIssued("T", PLAYER, "NORTH", UUID.randomUUID(), after(20)));
    List<HelmetFit> fits =
        List.of(fit(Kind.TRIED, "", 5), fit(Kind.PASSED, "", 10), fit(Kind.SIGNED_OFF, "", 20));
    assertThat(TimeLine.of(life, fits, ZoneOffset.UTC))
        .extracting(TimeLine.Line::what)
        .containsExactly(
            "Issued to a player at NORTH",
            "Signed off at NORTH",
            "Fit passed at NORTH",
            "Tried on",
            "Received at DEPOT, certified until Aug 1, 2027");
  }

  @Test
  @DisplayName("says in words which checks failed, and whom it concerns by the id alone")
  void failed() {
    TimeLine.Line line =
        TimeLine.of(List.of(), List.of(fit(Kind.FAILED, "two-fingers,snug", 0)), ZoneOffset.UTC)
            .getFirst();
    assertThat(line.what()).isEqualTo("Fit failed at NORTH: two fingers, snug");
    assertThat(line.when()).isEqualTo("Aug 1, 2026, 9:00 AM");
    assertThat(line.player()).contains(PLAYER);
  }

  @Test
  @DisplayName("leads from a hold to the hold, and from damage to its report")
  void leads() {
    UUID id = UUID.randomUUID();
    List<HelmetEvent> life =
        List.of(
            new HelmetEvent.HelmetHeld("T", id, Optional.of(PLAYER), "NORTH", "held", MORNING),
            new HelmetEvent.DamageReported(
                id,
                "T",
                "shell",
                "crack",
                "structural",
                Optional.empty(),
                "NORTH",
                Optional.of(1),
                "fitter.north",
                after(1)));
    assertThat(TimeLine.of(life, List.of(), ZoneOffset.UTC))
        .extracting(TimeLine.Line::href)
        .containsExactly("/inventory/helmets/T/damage/" + id, "/inventory/holds/" + id);
  }
}
