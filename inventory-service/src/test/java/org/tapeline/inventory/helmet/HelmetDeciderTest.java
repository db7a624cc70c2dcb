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
import org.tapeline.inventory.helmet.HelmetCommand.ComeBack;
import org.tapeline.inventory.helmet.HelmetCommand.Free;
import org.tapeline.inventory.helmet.HelmetCommand.Hold;
import org.tapeline.inventory.helmet.HelmetCommand.Inspect;
import org.tapeline.inventory.helmet.HelmetCommand.Issue;
import org.tapeline.inventory.helmet.HelmetCommand.Move;
import org.tapeline.inventory.helmet.HelmetCommand.Order;
import org.tapeline.inventory.helmet.HelmetCommand.Receive;
import org.tapeline.inventory.helmet.HelmetCommand.Recertify;
import org.tapeline.inventory.helmet.HelmetCommand.ReportDamage;
import org.tapeline.inventory.helmet.HelmetCommand.Retire;
import org.tapeline.inventory.helmet.HelmetCommand.Return;
import org.tapeline.inventory.helmet.HelmetCommand.SendOut;
import org.tapeline.inventory.helmet.HelmetCommand.SetAside;
import org.tapeline.inventory.helmet.HelmetEvent.DamageReported;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetCameBack;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetFreed;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetHeld;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetInspected;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetIssued;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetMoved;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetQuarantined;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetReceived;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetRetired;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetReturned;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetSentOut;
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
  @DisplayName("that was out of use since the sign-off is not issued on it, but on a later one")
  void pulledAfterFit() {
    Instant back = AT.plusSeconds(60);
    HelmetInspected inspected =
        new HelmetInspected(
            TAG,
            "back-to-stock",
            List.of("nothing-found"),
            Optional.of("available"),
            List.of(),
            Optional.of(1),
            "depot",
            back);
    UUID hold = UUID.randomUUID();
    HelmetHeld held = new HelmetHeld(TAG, hold, Optional.empty(), "NORTH", "held", AT);
    HelmetFreed freed = new HelmetFreed(TAG, hold, "NORTH", "available", back);
    HelmetSentOut sent = new HelmetSentOut(TAG, UUID.randomUUID(), "NORTH", AT);
    HelmetCameBack came = new HelmetCameBack(TAG, "NORTH", "available", back);
    Issue before = new Issue(PLAYER, "NORTH", SESSION, TODAY, back.minusMillis(1));
    Issue after = new Issue(PLAYER, "NORTH", SESSION, TODAY, back);
    for (HelmetEvent[] outOfUse :
        new HelmetEvent[][] {
          {RECEIVED, QUARANTINED, inspected}, {RECEIVED, held, freed}, {RECEIVED, sent, came}
        }) {
      assertThat(then(when(before, outOfUse)))
          .containsExactly(
              new IssueRefused(TAG, PLAYER, SESSION, "pulled-after-fit", back.minusMillis(1)));
      assertThat(then(when(after, outOfUse)))
          .containsExactly(new HelmetIssued(TAG, PLAYER, "NORTH", SESSION, back));
    }
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

  private static final UUID HOLD = UUID.randomUUID();
  private static final UUID OTHER_HOLD = UUID.randomUUID();
  private static final LocalDate NEXT_YEAR = TODAY.plusYears(1);

  private static HelmetEvent[] after(HelmetEvent[] given, HelmetCommand command) {
    return Stream.concat(Stream.of(given), then(when(command, given)).stream())
        .toArray(HelmetEvent[]::new);
  }

  private static HelmetEvent[] life(HelmetEvent first, HelmetCommand... commands) {
    HelmetEvent[] life = {first};
    for (HelmetCommand command : commands) {
      life = after(life, command);
    }
    return life;
  }

  private static String state(HelmetEvent[] life) {
    return Helmet.of(TAG, List.of(life)).says();
  }

  @Test
  @DisplayName("that is ordered is received under its tag, and is nobody's before")
  void ordered() {
    HelmetEvent[] ordered = {
      then(when(new Order("model-a", "youth-small", "NORTH", Optional.empty(), AT))).getFirst()
    };
    assertThat(state(ordered)).isEqualTo("ordered");
    assertThat(((IssueRefused) then(when(issueTo(PLAYER), ordered)).getFirst()).why())
        .isEqualTo("not-received");
    Receive receive =
        new Receive(
            "model-a", "youth-small", "A-1", LocalDate.EPOCH, Optional.empty(), "NORTH", AT);
    assertThat(state(after(ordered, receive))).isEqualTo("available");
  }

  @Test
  @DisplayName("put on hold is taken from its player, who is named, and cannot be issued")
  void held() {
    HelmetHeld held = (HelmetHeld) then(when(new Hold(HOLD, AT), RECEIVED, ISSUED)).getFirst();
    assertThat(held.player()).contains(PLAYER);
    assertThat(held.state()).isEqualTo("held");
    Decision again = when(issueTo(PLAYER), RECEIVED, ISSUED, held);
    assertThat(((IssueRefused) then(again).getFirst()).why()).isEqualTo("held");
  }

  @Test
  @DisplayName("is held once by one hold, and free only when its last hold is lifted")
  void twoHolds() {
    HelmetEvent[] life =
        life(RECEIVED, new Hold(HOLD, AT), new Hold(HOLD, AT), new Hold(OTHER_HOLD, AT));
    assertThat(life).hasSize(3);
    life = after(life, new Free(HOLD, AT));
    assertThat(state(life)).isEqualTo("held");
    life = after(life, new Free(OTHER_HOLD, AT));
    assertThat(state(life)).isEqualTo("available");
    assertThat(((HelmetFreed) life[life.length - 1]).state()).isEqualTo("available");
  }

  @Test
  @DisplayName("stays on hold through quarantine, inspection and reconditioning")
  void holdOutlasts() {
    SendOut out = new SendOut(SESSION, AT);
    ComeBack back = new ComeBack(Optional.of(NEXT_YEAR), "DEPOT", "depot", AT);
    HelmetEvent[] inspected =
        life(RECEIVED, new Hold(HOLD, AT), damage(true), new Inspect(true, List.of(), "depot", AT));
    assertThat(state(inspected)).isEqualTo("held");
    HelmetInspected last = (HelmetInspected) inspected[inspected.length - 1];
    assertThat(last.state()).contains("held");
    HelmetEvent[] reconditioned = life(RECEIVED, out, new Hold(HOLD, AT), back);
    assertThat(state(reconditioned)).isEqualTo("held");
  }

  @Test
  @DisplayName("on hold is not free when a hold is lifted that it is not under")
  void otherHold() {
    HelmetEvent[] life = life(RECEIVED, new Hold(HOLD, AT));
    assertThat(then(when(new Free(OTHER_HOLD, AT), life))).isEmpty();
  }

  @Test
  @DisplayName("comes back from the reconditioner at its new place, with its new certification")
  void reconditioned() {
    HelmetEvent[] life =
        life(
            received(Optional.of(TODAY.minusDays(1))),
            new SendOut(SESSION, AT),
            new ComeBack(Optional.of(NEXT_YEAR), "DEPOT", "depot", AT));
    Helmet helmet = Helmet.of(TAG, List.of(life));
    assertThat(helmet.says()).isEqualTo("available");
    assertThat(helmet.place()).isEqualTo("DEPOT");
    assertThat(helmet.certifiedUntil()).contains(NEXT_YEAR);
  }

  @Test
  @DisplayName("that comes back as it went keeps the certification that it had")
  void cameBackAsItWent() {
    HelmetEvent[] life =
        life(
            received(Optional.of(TODAY)),
            new SendOut(SESSION, AT),
            new ComeBack(Optional.empty(), "DEPOT", "depot", AT));
    assertThat(Helmet.of(TAG, List.of(life)).certifiedUntil()).contains(TODAY);
  }

  @Test
  @DisplayName("with its label read can be issued again")
  void labelRead() {
    HelmetEvent[] life =
        life(
            received(Optional.of(TODAY.minusDays(1))),
            new Recertify(NEXT_YEAR, "label-read", "depot", AT));
    assertThat(then(when(issueTo(PLAYER), life))).containsExactly(ISSUED);
  }

  @Test
  @DisplayName("is sent out from the shelf only, and taken back only when it was sent")
  void sentOutOnce() {
    assertThat(refusal(when(new SendOut(SESSION, AT), RECEIVED, ISSUED)))
        .isEqualTo("helmet-issued");
    assertThat(refusal(when(new ComeBack(Optional.empty(), "DEPOT", "depot", AT), RECEIVED)))
        .isEqualTo("helmet-available");
  }

  @Test
  @DisplayName("that is retired is beyond every step")
  void nothingAfterRetirement() {
    assertThat(Lifecycle.stepsFrom(Helmet.State.RETIRED)).isEmpty();
    assertThat(then(when(new Hold(HOLD, AT), RECEIVED, RETIRED))).isEmpty();
  }

  @Test
  @DisplayName("is retired once")
  void retiredOnce() {
    assertThat(then(when(new Retire("age", AT), RECEIVED))).containsExactly(RETIRED);
    assertThat(refusal(when(new Retire("age", AT), RECEIVED, RETIRED))).isEqualTo("helmet-retired");
  }

  @Test
  @DisplayName("says why a step is refused and what to do instead")
  void instead() {
    assertThat(((Refused) when(new SendOut(SESSION, AT), RECEIVED, ISSUED)).sentence())
        .isEqualTo(
            "The helmet LV260003Y is issued and cannot be sent out."
                + " Take it back from its player first.");
    assertThat(((Refused) when(new Move("RIVER", AT), RECEIVED, RETIRED)).sentence())
        .endsWith("cannot be moved. A retired helmet never comes back. Take another one.");
  }
}
