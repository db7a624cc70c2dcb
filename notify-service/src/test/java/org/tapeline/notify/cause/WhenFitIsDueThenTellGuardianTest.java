package org.tapeline.notify.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.cause.Fit.Due;
import org.tapeline.notify.cause.Fit.State;
import org.tapeline.notify.cause.Fit.Told;
import org.tapeline.notify.cause.Fit.Word;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.notice.CauseTableFile;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.Urgency;

@DisplayName("When a fit check is due or missed, then a guardian")
class WhenFitIsDueThenTellGuardianTest {
  private static final CauseTable TABLE = CauseTableFile.read();
  private static final Instant FITTED = Instant.parse("2025-09-01T15:00:00Z");
  private static final Instant NOW = FITTED.plus(Duration.ofDays(7));
  private static final Due WEEKLY = due(1, NOW, 3);
  private static final Due HAIR = due(2, NOW, 2);
  private static final Due COLD = new Due(id(3), NOW, Optional.empty());

  private static UUID id(long number) {
    return new UUID(0, number);
  }

  private static Due due(long event, Instant at, int lapsesInDays) {
    return new Due(id(event), at, Optional.of(at.plus(Duration.ofDays(lapsesInDays))));
  }

  private static Word word(long event, State state, Instant at) {
    return new Word(id(event), state, at, state == State.SIGNED_OFF ? "" : "recheck-overdue");
  }

  private static final Word SIGNED_OFF = word(8, State.SIGNED_OFF, FITTED);
  private static final Word LAPSED = word(9, State.LAPSED, NOW.plus(Duration.ofDays(3)));

  private static Fit fit(Word word, Due... dues) {
    return new Fit(id(100), Optional.ofNullable(word), List.of(dues), false, Optional.empty());
  }

  private static Told told(NoticeKind kind, long about, Instant by) {
    return new Told(kind, id(about), true, Optional.ofNullable(by));
  }

  private static List<Step.Tell> react(Fit fit, Told... told) {
    return WhenFitIsDueThenTellGuardian.react(TABLE, fit, List.of(told), NOW.plusSeconds(60));
  }

  @Test
  @DisplayName("is reminded once for all that is due, by the first day on which it counts")
  void reminder() {
    assertThat(react(fit(SIGNED_OFF, WEEKLY, COLD, HAIR)))
        .singleElement()
        .satisfies(
            tell -> {
              assertThat(tell.kind()).isEqualTo(NoticeKind.RECHECK_DUE);
              assertThat(tell.urgency()).isEqualTo(Urgency.NORMAL);
              assertThat(tell.causes()).containsExactly(id(2), id(1), id(3));
              assertThat(tell.by()).isEqualTo(HAIR.lapsesAt());
            });
    assertThat(react(fit(SIGNED_OFF))).isEmpty();
  }

  @Test
  @DisplayName("is reminded again of the same sign-off only for an earlier day")
  void again() {
    Told weekly = told(NoticeKind.RECHECK_DUE, 1, WEEKLY.lapsesAt().orElseThrow());
    assertThat(react(fit(SIGNED_OFF, WEEKLY), weekly)).isEmpty();
    assertThat(react(fit(SIGNED_OFF, WEEKLY, COLD), weekly)).isEmpty();
    assertThat(react(fit(SIGNED_OFF, WEEKLY, HAIR), weekly))
        .singleElement()
        .satisfies(tell -> assertThat(tell.causes()).containsExactly(id(2)));
    Told cold = told(NoticeKind.RECHECK_DUE, 3, null);
    assertThat(react(fit(SIGNED_OFF, COLD, WEEKLY), cold)).hasSize(1);
  }

  @Test
  @DisplayName("hears nothing of a check from before the sign-off, whichever was heard of first")
  void over() {
    Word since = word(8, State.SIGNED_OFF, NOW.plusSeconds(30));
    assertThat(react(fit(since, WEEKLY))).isEmpty();
    assertThat(react(fit(null, WEEKLY))).hasSize(1);
    // What was due in the very moment of the fit is due of that fit.
    assertThat(react(fit(SIGNED_OFF, due(1, FITTED, 30)))).hasSize(1);
  }

  @Test
  @DisplayName("hears nothing while a re-fit case is open, or of a sign-off that was withdrawn")
  void caseOpen() {
    Fit open = new Fit(id(100), Optional.of(LAPSED), List.of(WEEKLY), true, Optional.of(NOW));
    assertThat(react(open)).isEmpty();
    assertThat(react(fit(word(9, State.WITHDRAWN, NOW), WEEKLY))).isEmpty();
  }

  @Test
  @DisplayName("is told once not to let it be worn when the sign-off lapsed, and not of the check")
  void lapsed() {
    assertThat(react(fit(LAPSED, WEEKLY)))
        .singleElement()
        .satisfies(
            tell -> {
              assertThat(tell.kind()).isEqualTo(NoticeKind.SIGN_OFF_LAPSED);
              assertThat(tell.urgency()).isEqualTo(Urgency.DO_NOT_WEAR);
            });
    assertThat(react(fit(LAPSED, WEEKLY), told(NoticeKind.SIGN_OFF_LAPSED, 9, LAPSED.at())))
        .isEmpty();
    Due missed = due(1, NOW.minus(Duration.ofDays(4)), 3);
    assertThat(react(fit(SIGNED_OFF, missed))).isEmpty();
  }

  @Test
  @DisplayName(
      "who was told of a lapse hears once that the player was fitted, unless a case says it")
  void fittedAgain() {
    Told lapse = told(NoticeKind.SIGN_OFF_LAPSED, 9, LAPSED.at());
    Word fitted = word(10, State.SIGNED_OFF, LAPSED.at().plusSeconds(60));
    assertThat(react(fit(fitted), lapse))
        .singleElement()
        .satisfies(tell -> assertThat(tell.kind()).isEqualTo(NoticeKind.FITTED_AGAIN));
    assertThat(react(fit(fitted), lapse, told(NoticeKind.FITTED_AGAIN, 9, null))).isEmpty();
    Told untried = new Told(NoticeKind.SIGN_OFF_LAPSED, id(9), false, lapse.by());
    assertThat(react(fit(fitted), untried)).isEmpty();
    Optional<Instant> caseSince = Optional.of(LAPSED.at().plusSeconds(1));
    assertThat(react(new Fit(id(100), Optional.of(fitted), List.of(), false, caseSince), lapse))
        .isEmpty();
  }
}
