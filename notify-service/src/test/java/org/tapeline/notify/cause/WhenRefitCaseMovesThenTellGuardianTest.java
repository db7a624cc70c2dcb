package org.tapeline.notify.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.cause.RefitCase.Booking;
import org.tapeline.notify.cause.RefitCase.CalledOff;
import org.tapeline.notify.cause.RefitCase.Closing;
import org.tapeline.notify.cause.RefitCase.Opening;
import org.tapeline.notify.notice.CauseName;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.notice.CauseTableFile;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.NoticeOfCase;
import org.tapeline.notify.notice.Urgency;

@DisplayName("When a re-fit case moves, then a guardian")
class WhenRefitCaseMovesThenTellGuardianTest {
  private static final CauseTable TABLE = CauseTableFile.read();
  private static final UUID CASE = id(1);
  private static final Opening STOP =
      new Opening(id(2), Urgency.DO_NOT_WEAR, "fit-failed", "NORTH", "U10-HAWKS");
  private static final Opening SOON =
      new Opening(id(2), Urgency.SOON, "hold", "NORTH", "U10-HAWKS");
  private static final Booking SATURDAY = booking(3, 1, "2025-09-13T15:00:00Z", "NORTH");
  private static final Booking SUNDAY = booking(4, 2, "2025-09-14T15:00:00Z", "NORTH");
  private static final boolean WAITS = false;
  private static final boolean WAIT_IS_OVER = true;

  private static UUID id(long number) {
    return new UUID(0x7000L, 0x8000_0000_0000_0000L | number);
  }

  private static Booking booking(long event, long revision, String starts, String field) {
    Instant startsAt = Instant.parse(starts);
    return new Booking(
        id(event), revision, field, startsAt, startsAt.plusSeconds(1200), ZoneId.of("UTC"));
  }

  private static RefitCase refitCase(Opening opening, Booking booking, Closing closing) {
    return new RefitCase(
        CASE,
        id(9),
        Optional.ofNullable(opening),
        Optional.ofNullable(booking),
        Optional.empty(),
        Optional.ofNullable(closing));
  }

  private static RefitCase calledOff(Booking was) {
    return new RefitCase(
        CASE,
        id(9),
        Optional.of(STOP),
        Optional.empty(),
        Optional.of(new CalledOff(id(8), was)),
        Optional.empty());
  }

  private static ToldSoFar told(Booking slot) {
    return new ToldSoFar(true, true, false, false, Optional.ofNullable(slot).map(Booking::slot));
  }

  private static Step.Tell tell(
      NoticeKind kind, UUID about, Urgency urgency, String template, Booking slot, UUID... causes) {
    CauseName cause =
        TABLE.rules().stream()
            .filter(rule -> rule.kind() == kind)
            .findFirst()
            .orElseThrow()
            .cause();
    return new Step.Tell(
        cause,
        kind,
        about,
        urgency,
        template,
        List.of(causes),
        Optional.ofNullable(slot),
        Optional.empty());
  }

  private static List<Step> react(RefitCase refitCase, ToldSoFar told, boolean waitIsOver) {
    return WhenRefitCaseMovesThenTellGuardian.react(TABLE, refitCase, told, waitIsOver);
  }

  @Test
  @DisplayName("is told at once, with the date, when the booking is known")
  void withDate() {
    assertThat(react(refitCase(STOP, SATURDAY, null), ToldSoFar.nothing(), WAITS))
        .containsExactly(
            tell(
                NoticeKind.DO_NOT_WEAR_REFIT,
                CASE,
                Urgency.DO_NOT_WEAR,
                "do-not-wear-dated",
                SATURDAY,
                id(2),
                id(3)));
    assertThat(react(refitCase(SOON, SATURDAY, null), ToldSoFar.nothing(), WAITS))
        .containsExactly(
            tell(
                NoticeKind.REFIT_SOON,
                CASE,
                Urgency.SOON,
                "refit-soon-dated",
                SATURDAY,
                id(2),
                id(3)));
  }

  @Test
  @DisplayName("waits a moment for the date, and no longer")
  void withoutDate() {
    assertThat(react(refitCase(STOP, null, null), ToldSoFar.nothing(), WAITS)).isEmpty();
    assertThat(react(refitCase(STOP, null, null), ToldSoFar.nothing(), WAIT_IS_OVER))
        .containsExactly(
            tell(
                NoticeKind.DO_NOT_WEAR_REFIT,
                CASE,
                Urgency.DO_NOT_WEAR,
                "do-not-wear-undated",
                null,
                id(2)));
    assertThat(react(refitCase(SOON, null, null), ToldSoFar.nothing(), WAIT_IS_OVER))
        .containsExactly(
            tell(NoticeKind.REFIT_SOON, CASE, Urgency.SOON, "refit-soon-undated", null, id(2)));
  }

  @Test
  @DisplayName("hears nothing of a booking before the case is known to be open")
  void bookingFirst() {
    assertThat(react(refitCase(null, SATURDAY, null), ToldSoFar.nothing(), WAIT_IS_OVER)).isEmpty();
  }

  @Test
  @DisplayName("gets a short second notice when the date comes later")
  void dateLater() {
    assertThat(react(refitCase(STOP, SATURDAY, null), told(null), WAIT_IS_OVER))
        .containsExactly(
            tell(NoticeKind.REFIT_DATE, CASE, Urgency.DO_NOT_WEAR, "refit-date", SATURDAY, id(3)));
    assertThat(react(refitCase(STOP, null, null), told(null), WAIT_IS_OVER)).isEmpty();
  }

  @Test
  @DisplayName("gets one notice for another date or field, and none for the same again")
  void changed() {
    assertThat(react(refitCase(STOP, SUNDAY, null), told(SATURDAY), WAIT_IS_OVER))
        .containsExactly(
            tell(
                NoticeKind.REFIT_CHANGED,
                id(4),
                Urgency.DO_NOT_WEAR,
                "refit-changed",
                SUNDAY,
                id(4)));
    Booking river = booking(5, 3, "2025-09-13T15:00:00Z", "RIVER");
    assertThat(react(refitCase(STOP, river, null), told(SATURDAY), WAIT_IS_OVER)).hasSize(1);
    Booking again = booking(6, 4, "2025-09-13T15:00:00Z", "NORTH");
    assertThat(react(refitCase(STOP, again, null), told(SATURDAY), WAIT_IS_OVER)).isEmpty();
  }

  @Test
  @DisplayName("hears once that the date does not hold, and of the next one when there is one")
  void calledOff() {
    assertThat(react(calledOff(SATURDAY), told(SATURDAY), WAIT_IS_OVER))
        .containsExactly(
            tell(
                NoticeKind.REFIT_UNBOOKED,
                id(8),
                Urgency.DO_NOT_WEAR,
                "refit-unbooked",
                null,
                id(8)));
    ToldSoFar off = new ToldSoFar(true, true, false, true, Optional.empty());
    assertThat(react(calledOff(SATURDAY), off, WAIT_IS_OVER)).isEmpty();
    assertThat(react(refitCase(STOP, SUNDAY, null), off, WAIT_IS_OVER))
        .containsExactly(
            tell(NoticeKind.REFIT_DATE, id(4), Urgency.DO_NOT_WEAR, "refit-date", SUNDAY, id(4)));
  }

  @Test
  @DisplayName("who was told no date hears nothing of one that does not hold")
  void calledOffBeforeItWasTold() {
    assertThat(react(calledOff(SATURDAY), told(null), WAIT_IS_OVER)).isEmpty();
    assertThat(react(calledOff(SATURDAY), ToldSoFar.nothing(), WAITS)).isEmpty();
  }

  @Test
  @DisplayName("counts a date as told until it was called off")
  void toldSoFar() {
    NoticeOfCase dated =
        new NoticeOfCase(
            NoticeKind.DO_NOT_WEAR_REFIT,
            false,
            true,
            Optional.of(SATURDAY.startsAt()),
            Optional.of("NORTH"));
    NoticeOfCase off =
        new NoticeOfCase(
            NoticeKind.REFIT_UNBOOKED, false, true, Optional.empty(), Optional.empty());
    NoticeOfCase again =
        new NoticeOfCase(
            NoticeKind.REFIT_DATE,
            false,
            true,
            Optional.of(SUNDAY.startsAt()),
            Optional.of("NORTH"));
    assertThat(ToldSoFar.of(List.of(dated)).slot()).contains(SATURDAY.slot());
    assertThat(ToldSoFar.of(List.of(dated, off)).slot()).isEmpty();
    assertThat(ToldSoFar.of(List.of(dated, off, again)).slot()).contains(SUNDAY.slot());
  }

  @Test
  @DisplayName("hears of the end only when something was sent")
  void closed() {
    Closing fitted = new Closing(id(7), true);
    Step.Tell fittedAgain =
        tell(NoticeKind.FITTED_AGAIN, CASE, Urgency.NORMAL, "fitted-again", null, id(7));
    assertThat(react(refitCase(STOP, SATURDAY, fitted), ToldSoFar.nothing(), WAIT_IS_OVER))
        .containsExactly(new Step.CancelUnsent());
    assertThat(react(refitCase(STOP, SATURDAY, fitted), told(SATURDAY), WAIT_IS_OVER))
        .containsExactly(new Step.CancelUnsent(), fittedAgain);
    ToldSoFar unsent = new ToldSoFar(true, false, false, false, Optional.empty());
    assertThat(react(refitCase(STOP, SATURDAY, fitted), unsent, WAIT_IS_OVER))
        .containsExactly(new Step.CancelUnsent());
    ToldSoFar end = new ToldSoFar(true, true, true, false, Optional.empty());
    assertThat(react(refitCase(STOP, SATURDAY, fitted), end, WAIT_IS_OVER))
        .containsExactly(new Step.CancelUnsent());
  }

  @Test
  @DisplayName("who heard the date alone, since the first notice was taken back, hears of the case")
  void dateWithoutCase() {
    ToldSoFar dateOnly =
        ToldSoFar.of(
            List.of(
                new NoticeOfCase(
                    NoticeKind.REFIT_DATE,
                    false,
                    true,
                    Optional.of(SATURDAY.startsAt()),
                    Optional.of("NORTH"))));
    assertThat(react(refitCase(STOP, SATURDAY, null), dateOnly, WAIT_IS_OVER))
        .singleElement()
        .isInstanceOfSatisfying(
            Step.Tell.class,
            tell -> assertThat(tell.kind()).isEqualTo(NoticeKind.DO_NOT_WEAR_REFIT));
  }

  @Test
  @DisplayName("of a case that was cancelled gets no more of what was not sent")
  void cancelled() {
    Closing cancelled = new Closing(id(7), false);
    assertThat(react(refitCase(STOP, SATURDAY, cancelled), told(SATURDAY), WAIT_IS_OVER))
        .containsExactly(new Step.CancelUnsent());
  }
}
