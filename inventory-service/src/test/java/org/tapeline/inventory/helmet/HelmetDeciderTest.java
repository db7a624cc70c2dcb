package org.tapeline.inventory.helmet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.helmet.Decision.Accepted;
import org.tapeline.inventory.helmet.Decision.Refused;
import org.tapeline.inventory.helmet.HelmetCommand.Inspect;
import org.tapeline.inventory.helmet.HelmetCommand.Issue;
import org.tapeline.inventory.helmet.HelmetCommand.Move;
import org.tapeline.inventory.helmet.HelmetCommand.Receive;
import org.tapeline.inventory.helmet.HelmetCommand.ReportDamage;
import org.tapeline.inventory.helmet.HelmetCommand.Retire;
import org.tapeline.inventory.helmet.HelmetCommand.Return;
import org.tapeline.inventory.helmet.HelmetCommand.SetAside;
import org.tapeline.inventory.helmet.HelmetEvent.DamageReported;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetInspected;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetIssued;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetMoved;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetQuarantined;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetReceived;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetRetired;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetReturned;
import org.tapeline.inventory.helmet.HelmetEvent.IssueRefused;

@DisplayName("A helmet")
class HelmetDeciderTest {
  private static final String TAG = "LV260003Y";
  private static final Instant AT = Instant.parse("2026-08-01T15:06:00Z");
  private static final LocalDate TODAY = LocalDate.parse("2026-08-01");
  private static final UUID PLAYER = UUID.randomUUID();
  private static final UUID OTHER = UUID.randomUUID();
  private static final UUID SESSION = UUID.randomUUID();
  private static final HelmetReceived RECEIVED = received(Optional.empty());
  private static final HelmetIssued ISSUED = new HelmetIssued(TAG, PLAYER, "NORTH", SESSION, AT);
  private static final HelmetQuarantined QUARANTINED =
      new HelmetQuarantined(TAG, "damage", Optional.empty(), "NORTH", AT);
  private static final HelmetRetired RETIRED = new HelmetRetired(TAG, "age", AT);

  private static HelmetReceived received(Optional<LocalDate> until) {
    return new HelmetReceived(
        TAG, "model-a", "youth-small", "A-1", LocalDate.EPOCH, until, "NORTH", AT);
  }

  private static Decision when(HelmetCommand command, HelmetEvent... given) {
    return HelmetDecider.decide(Helmet.of(TAG, List.of(given)), command);
  }

  private static List<HelmetEvent> then(Decision decision) {
    assertThat(decision).isInstanceOf(Accepted.class);
    return ((Accepted) decision).events();
  }

  private static String refusal(Decision decision) {
    assertThat(decision).isInstanceOf(Refused.class);
    assertThat(((Refused) decision).sentence()).isNotBlank();
    return ((Refused) decision).code();
  }

  private static Issue issueTo(UUID player) {
    return new Issue(player, "NORTH", SESSION, TODAY, AT);
  }

  private static ReportDamage damage(boolean structural) {
    return new ReportDamage(SESSION, "shell", "crack", structural, "fitter.north", AT);
  }

  @Test
  @DisplayName("is set aside for inspection from stock or from its player, and says nothing of why")
  void setAside() {
    HelmetQuarantined fromPlayer =
        new HelmetQuarantined(TAG, "inspection", Optional.of(PLAYER), "NORTH", AT);
    HelmetQuarantined fromStock =
        new HelmetQuarantined(TAG, "inspection", Optional.empty(), "NORTH", AT);
    SetAside aside = new SetAside(AT);
    assertThat(then(when(aside, RECEIVED, ISSUED))).containsExactly(fromPlayer);
    assertThat(then(when(aside, RECEIVED))).containsExactly(fromStock);
    assertThat(then(when(aside))).isEmpty();
    assertThat(then(when(aside, RECEIVED, QUARANTINED))).isEmpty();
    assertThat(then(when(aside, RECEIVED, RETIRED))).isEmpty();
  }

  @Test
  @DisplayName("is received once")
  void receivedOnce() {
    Receive receive =
        new Receive(
            "model-a", "youth-small", "A-1", LocalDate.EPOCH, Optional.empty(), "NORTH", AT);
    assertThat(then(when(receive))).containsExactly(RECEIVED);
    assertThat(refusal(when(receive, RECEIVED))).isEqualTo("tag-taken");
  }

  @Test
  @DisplayName("in stock is issued, and again to the one who has it")
  void issued() {
    assertThat(then(when(issueTo(PLAYER), RECEIVED))).containsExactly(ISSUED);
    assertThat(then(when(issueTo(PLAYER), RECEIVED, ISSUED))).containsExactly(ISSUED);
  }

  @Test
  @DisplayName("that is unknown, out of use, retired, with another or out of certification is not")
  void notIssued() {
    HelmetReceived lapsed = received(Optional.of(TODAY.minusDays(1)));
    assertThat(
            Stream.of(
                    when(issueTo(PLAYER)),
                    when(issueTo(PLAYER), RECEIVED, QUARANTINED),
                    when(issueTo(PLAYER), RECEIVED, RETIRED),
                    when(issueTo(OTHER), RECEIVED, ISSUED),
                    when(issueTo(PLAYER), lapsed),
                    when(issueTo(PLAYER), lapsed, ISSUED))
                .map(d -> ((IssueRefused) then(d).getFirst()).why()))
        .containsExactly(
            "unknown-helmet",
            "quarantined",
            "retired",
            "issued-to-another",
            "out-of-certification",
            "out-of-certification");
  }

  @Test
  @DisplayName("is issued on the last day of its certification")
  void lastDay() {
    assertThat(then(when(issueTo(PLAYER), received(Optional.of(TODAY))))).containsExactly(ISSUED);
  }

  @Test
  @DisplayName("comes back from its player only")
  void returned() {
    Return back = new Return("RIVER", AT);
    assertThat(then(when(back, RECEIVED, ISSUED)))
        .containsExactly(new HelmetReturned(TAG, PLAYER, "RIVER", AT));
    assertThat(refusal(when(back, RECEIVED))).isEqualTo("helmet-available");
  }

  @Test
  @DisplayName("is moved, but not to where it is, and not when it is retired")
  void moved() {
    assertThat(then(when(new Move("RIVER", AT), RECEIVED)))
        .containsExactly(new HelmetMoved(TAG, "NORTH", "RIVER", AT));
    assertThat(then(when(new Move("NORTH", AT), RECEIVED))).isEmpty();
    assertThat(refusal(when(new Move("RIVER", AT), RECEIVED, RETIRED))).isEqualTo("helmet-retired");
  }

  @Test
  @DisplayName("with structural damage is out of use at once, and says who had it")
  void structural() {
    List<HelmetEvent> events = then(when(damage(true), RECEIVED, ISSUED));
    assertThat(((DamageReported) events.get(0)).severity()).isEqualTo("structural");
    assertThat(((HelmetQuarantined) events.get(1)).player()).contains(PLAYER);
  }

  @Test
  @DisplayName("with cosmetic damage stays in use")
  void cosmetic() {
    List<HelmetEvent> events = then(when(damage(false), RECEIVED));
    assertThat(events).hasSize(1);
    assertThat(((DamageReported) events.getFirst()).severity()).isEqualTo("cosmetic");
  }

  @Test
  @DisplayName("out of use already is not taken out of use again")
  void twice() {
    assertThat(then(when(damage(true), RECEIVED, QUARANTINED))).hasSize(1);
    assertThat(refusal(when(damage(true)))).isEqualTo("helmet-not-known-here");
  }

  @Test
  @DisplayName("that is inspected goes back to stock or is retired")
  void inspected() {
    List<HelmetEvent> back =
        then(when(new Inspect(true, List.of(), "depot", AT), RECEIVED, QUARANTINED));
    assertThat(back).hasSize(1).first().isInstanceOf(HelmetInspected.class);
    List<HelmetEvent> retired =
        then(when(new Inspect(false, List.of("cracked"), "depot", AT), RECEIVED, QUARANTINED));
    assertThat(retired).hasSize(2).last().isInstanceOf(HelmetRetired.class);
    assertThat(refusal(when(new Inspect(true, List.of(), "depot", AT), RECEIVED)))
        .isEqualTo("helmet-available");
  }

  @Test
  @DisplayName("is retired once")
  void retiredOnce() {
    assertThat(then(when(new Retire("age", AT), RECEIVED))).containsExactly(RETIRED);
    assertThat(refusal(when(new Retire("age", AT), RECEIVED, RETIRED))).isEqualTo("helmet-retired");
  }
}
