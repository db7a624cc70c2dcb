package org.tapeline.fitting.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.recheck.RecheckRules.Check;
import org.tapeline.fitting.recheck.Trigger;
import org.tapeline.fitting.signoff.WearRules.Helmet;
import org.tapeline.fitting.signoff.WearRules.Known;
import org.tapeline.fitting.signoff.WearRules.Picture;
import org.tapeline.fitting.signoff.WearRules.Word;

@DisplayName("Whether a player may wear the helmet")
class WearRulesTest {
  private static final UUID PLAYER = UUID.randomUUID();
  private static final Instant SIGNED = Instant.parse("2026-08-01T15:06:00Z");
  private static final Instant NEXT_DAY = SIGNED.plus(Duration.ofDays(1));
  private static final LocalDate TODAY = LocalDate.parse("2026-08-02");
  private static final Duration OLDEST = Duration.ofSeconds(10);
  private static final Check WEEKLY =
      new Check(
          Trigger.WEEKLY,
          SIGNED,
          SIGNED.plus(Duration.ofDays(7)),
          Optional.of(SIGNED.plus(Duration.ofDays(10))),
          "The weekly re-check is due");
  private static final List<Check> CHECKS = List.of(WEEKLY);
  private static final Word SIGNED_OFF = new Word(PLAYER, "signed-off", "", SIGNED);
  private static final Helmet ISSUED = issuedTo(PLAYER);

  private static Helmet issuedTo(UUID holder) {
    return new Helmet(
        "issued", Optional.ofNullable(holder), Optional.empty(), Optional.empty(), true);
  }

  private static Helmet available(Instant returnedAt) {
    return new Helmet(
        "available", Optional.empty(), Optional.empty(), Optional.ofNullable(returnedAt), true);
  }

  private static Helmet certifiedUntil(LocalDate day) {
    return new Helmet("issued", Optional.of(PLAYER), Optional.of(day), Optional.empty(), true);
  }

  private static Picture fresh(Instant now) {
    return new Picture(Optional.of(now), OLDEST, "3:06 PM");
  }

  private static WearState at(Instant now, Word word, Helmet helmet) {
    return WearRules.state(known(word, helmet, false, CHECKS), fresh(now), now, TODAY);
  }

  private static Known known(Word word, Helmet helmet, boolean outOfPlay, List<Check> checks) {
    return new Known(Optional.ofNullable(word), Optional.ofNullable(helmet), outOfPlay, checks);
  }

  private static WearState nextDay(Word word, Helmet helmet) {
    return at(NEXT_DAY, word, helmet);
  }

  private static WearState seen(Picture picture) {
    return WearRules.state(known(SIGNED_OFF, ISSUED, false, CHECKS), picture, NEXT_DAY, TODAY);
  }

  private static void doNotWear(WearState state, String status, String reason) {
    assertThat(state).isEqualTo(new WearState(status, "do-not-wear", "Do not wear", reason));
  }

  @Test
  @DisplayName("yes: signed off, in service, and with this player")
  void mayWear() {
    assertThat(nextDay(SIGNED_OFF, ISSUED))
        .isEqualTo(new WearState("signed-off", "may-wear", "May wear", ""));
  }

  @Test
  @DisplayName("yes: just signed off and not yet booked out")
  void notYetIssued() {
    assertThat(nextDay(SIGNED_OFF, available(null)).code()).isEqualTo("may-wear");
    assertThat(nextDay(SIGNED_OFF, available(SIGNED.minusMillis(1))).code()).isEqualTo("may-wear");
  }

  @Test
  @DisplayName("no: handed back at or after the sign-off")
  void handedBack() {
    for (Instant back : List.of(SIGNED, SIGNED.plusSeconds(1))) {
      doNotWear(nextDay(SIGNED_OFF, available(back)), "withdrawn", "The helmet was handed back");
    }
  }

  @Test
  @DisplayName("no: never fitted, whatever helmet there is")
  void neverFitted() {
    doNotWear(nextDay(null, null), "never-fitted", "Not fitted yet");
    doNotWear(nextDay(null, ISSUED), "never-fitted", "Not fitted yet");
  }

  @Test
  @DisplayName("no: the sign-off was withdrawn, each reason in its own words")
  void withdrawn() {
    List<String> said =
        List.of(
                "fit-failed",
                "damage",
                "hold",
                "issue-refused",
                "retired",
                "handed-on",
                "suspected-concussion",
                "a-reason-of-next-year")
            .stream()
            .map(why -> nextDay(new Word(PLAYER, "withdrawn", why, SIGNED), ISSUED))
            .map(
                state -> {
                  assertThat(state.code()).isEqualTo("do-not-wear");
                  assertThat(state.status()).isEqualTo("withdrawn");
                  return state.reason();
                })
            .toList();
    assertThat(said).doesNotHaveDuplicates().doesNotContain("");
    assertThat(said.getLast()).isEqualTo("The sign-off was withdrawn");
  }

  @Test
  @DisplayName("no: the sign-off was told to have lapsed")
  void toldLapsed() {
    doNotWear(
        nextDay(new Word(PLAYER, "lapsed", "overdue", SIGNED), ISSUED),
        "lapsed",
        "The sign-off has lapsed: fit again");
  }

  @Test
  @DisplayName("check today: from the very moment at which the re-check is due")
  void recheckDue() {
    Instant due = SIGNED.plus(Duration.ofDays(7));
    assertThat(at(due.minusMillis(1), SIGNED_OFF, ISSUED).code()).isEqualTo("may-wear");
    assertThat(at(due, SIGNED_OFF, ISSUED))
        .isEqualTo(
            new WearState("check-due", "check-today", "Check today", "The weekly re-check is due"));
  }

  @Test
  @DisplayName("no: from the very moment at which the sign-off lapses")
  void lapses() {
    Instant lapse = SIGNED.plus(Duration.ofDays(10));
    assertThat(at(lapse.minusMillis(1), SIGNED_OFF, ISSUED).code()).isEqualTo("check-today");
    doNotWear(
        at(lapse, SIGNED_OFF, ISSUED),
        "lapsed",
        "The re-check is overdue: the sign-off has lapsed");
  }

  @Test
  @DisplayName("no: the certification ended yesterday; yes on its last day")
  void certification() {
    assertThat(nextDay(SIGNED_OFF, certifiedUntil(TODAY)).code()).isEqualTo("may-wear");
    doNotWear(
        nextDay(SIGNED_OFF, certifiedUntil(TODAY.minusDays(1))),
        "withdrawn",
        "The certification of the helmet has ended");
  }

  @Test
  @DisplayName("no: the helmet is out of service, with another player or not on record")
  void helmet() {
    for (String state : List.of("quarantined", "retired", "a-state-of-next-year")) {
      Helmet helmet = new Helmet(state, Optional.empty(), Optional.empty(), Optional.empty(), true);
      doNotWear(nextDay(SIGNED_OFF, helmet), "withdrawn", "The helmet is not in service");
    }
    String another = "By the records another player has this helmet";
    doNotWear(nextDay(SIGNED_OFF, issuedTo(UUID.randomUUID())), "withdrawn", another);
    doNotWear(nextDay(SIGNED_OFF, issuedTo(null)), "withdrawn", another);
    doNotWear(nextDay(SIGNED_OFF, null), "withdrawn", "The helmet is not on record");
  }

  @Test
  @DisplayName("not known: news of the helmet could not be read")
  void unreadable() {
    Helmet helmet =
        new Helmet("issued", Optional.of(PLAYER), Optional.empty(), Optional.empty(), false);
    assertThat(nextDay(SIGNED_OFF, helmet).code()).isEqualTo("unknown");
  }

  @Test
  @DisplayName("not known: the picture is older than it may be, by a millisecond")
  void stale() {
    Instant oldest = NEXT_DAY.minus(OLDEST);
    assertThat(seen(new Picture(Optional.of(oldest), OLDEST, "3:06 PM")).code())
        .isEqualTo("may-wear");
    assertThat(seen(new Picture(Optional.of(oldest.minusMillis(1)), OLDEST, "3:06 PM")))
        .isEqualTo(new WearState("unknown", "unknown", "Not known", "Not known since 3:06 PM"));
  }

  @Test
  @DisplayName("not known: nothing was heard yet, and that is said also of one never fitted")
  void justStarted() {
    Picture none = new Picture(Optional.empty(), OLDEST, "");
    assertThat(seen(none).reason()).isEqualTo("Not known yet: the service has just started");
    assertThat(WearRules.state(known(null, null, false, List.of()), none, NEXT_DAY, TODAY).code())
        .isEqualTo("unknown");
  }

  @Test
  @DisplayName("no: the helmet went out of certification, said in its own words")
  void toldUncertified() {
    doNotWear(
        nextDay(new Word(PLAYER, "lapsed", "out-of-certification", SIGNED), ISSUED),
        "lapsed",
        "The certification of the helmet has ended");
  }

  @Test
  @DisplayName("no: out of play, whatever sign-off there is and however old the picture")
  void outOfPlay() {
    String why = "Out of play: a licensed health-care professional decides the return";
    Picture none = new Picture(Optional.empty(), OLDEST, "");
    for (Picture picture : List.of(fresh(NEXT_DAY), none)) {
      doNotWear(
          WearRules.state(known(SIGNED_OFF, ISSUED, true, CHECKS), picture, NEXT_DAY, TODAY),
          "out-of-play",
          why);
      doNotWear(
          WearRules.state(known(null, null, true, List.of()), picture, NEXT_DAY, TODAY),
          "out-of-play",
          why);
    }
  }

  @Test
  @DisplayName("no: in inspection, without a word of why")
  void inspection() {
    doNotWear(
        nextDay(new Word(PLAYER, "withdrawn", "inspection", SIGNED), ISSUED),
        "withdrawn",
        "The helmet went to inspection: fit again");
  }

  @Test
  @DisplayName("not known: no re-check is planned, so the sign-off would hold for ever")
  void noPlan() {
    assertThat(
            WearRules.state(
                    known(SIGNED_OFF, ISSUED, false, List.of()), fresh(NEXT_DAY), NEXT_DAY, TODAY)
                .code())
        .isEqualTo("unknown");
  }

  @Test
  @DisplayName("check today: every reason is said; one that has lapsed is enough for no")
  void moreThanOneCheck() {
    Check hair = check(Trigger.HAIR_CHANGED, NEXT_DAY, "The hair has changed");
    Check cold = check(Trigger.COLDER, NEXT_DAY, "It is colder");
    assertThat(
            WearRules.state(
                    known(SIGNED_OFF, ISSUED, false, List.of(WEEKLY, hair, cold)),
                    fresh(NEXT_DAY),
                    NEXT_DAY,
                    TODAY)
                .reason())
        .isEqualTo("The hair has changed; It is colder");
    Instant later = NEXT_DAY.plus(Duration.ofDays(3));
    assertThat(
            WearRules.state(
                    known(SIGNED_OFF, ISSUED, false, List.of(WEEKLY, hair)),
                    fresh(later),
                    later,
                    TODAY)
                .status())
        .isEqualTo("lapsed");
  }

  private static Check check(Trigger trigger, Instant due, String said) {
    return new Check(trigger, due, due, Optional.of(due.plus(Duration.ofDays(3))), said);
  }
}
