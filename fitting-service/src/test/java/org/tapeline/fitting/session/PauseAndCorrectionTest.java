package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.fitting.session.ASession.AT;
import static org.tapeline.fitting.session.ASession.TAG;
import static org.tapeline.fitting.session.ASession.adjust;
import static org.tapeline.fitting.session.ASession.allPassed;
import static org.tapeline.fitting.session.ASession.failed;
import static org.tapeline.fitting.session.ASession.helmetOn;
import static org.tapeline.fitting.session.ASession.opened;
import static org.tapeline.fitting.session.ASession.pass;
import static org.tapeline.fitting.session.ASession.passed;
import static org.tapeline.fitting.session.SmallProtocol.SCREWS;
import static org.tapeline.fitting.session.SmallProtocol.SNUG;
import static org.tapeline.fitting.session.SmallProtocol.STRAP;

import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.session.FitSession.Status;
import org.tapeline.fitting.session.FitSessionCommand.Correct;
import org.tapeline.fitting.session.FitSessionCommand.PassOver;
import org.tapeline.fitting.session.FitSessionCommand.Pause;
import org.tapeline.fitting.session.FitSessionCommand.Resume;
import org.tapeline.fitting.session.FitSessionCommand.TakeBackPass;
import org.tapeline.fitting.session.FitSessionEvent.EntryCorrected;
import org.tapeline.fitting.session.FitSessionEvent.PassTakenBack;
import org.tapeline.fitting.session.FitSessionEvent.RemedyPassedOver;

@DisplayName("A session that does not run straight")
class PauseAndCorrectionTest {
  private static final String FITTER = ASession.OPEN.fitter();

  private static Correct correct(String check) {
    return new Correct(check, Optional.empty(), "wrong-button", AT);
  }

  @Test
  @DisplayName("is put aside with all its answers, and another fitter goes on with it")
  void takenOver() {
    ASession session = helmetOn().with(passed(SNUG)).with(new Pause(AT));
    assertThat(session.refusal(passed(STRAP))).isEqualTo("session-paused");
    assertThat(session.refusal(new Pause(AT))).isEqualTo("session-paused");
    session.with(new Resume("fitter.river", AT));
    assertThat(session.state().fitter()).isEqualTo("fitter.river");
    assertThat(session.state().passed(SNUG)).isTrue();
    assertThat(session.with(passed(STRAP)).state().passed(STRAP)).isTrue();
  }

  @Test
  @DisplayName("can be taken over while it is open, not by whoever has it")
  void inHand() {
    assertThat(opened().refusal(new Resume(FITTER, AT))).isEqualTo("in-hand");
    assertThat(opened().with(new Resume("fitter.river", AT)).state().fitter())
        .isEqualTo("fitter.river");
    assertThat(opened().with(new Pause(AT)).with(new Resume(FITTER, AT)).state().status())
        .isEqualTo(Status.OPEN);
  }

  @Test
  @DisplayName("ends while it is put aside, and then cannot be resumed")
  void endedAside() {
    ASession ended = opened().with(new Pause(AT)).with(ASession.abandon("player-left"));
    assertThat(ended.refusal(new Resume("fitter.river", AT))).isEqualTo("session-not-open");
    assertThat(ASession.notOpened().refusal(new Resume(FITTER, AT))).isEqualTo("session-not-open");
  }

  @Test
  @DisplayName("loses an answer that was a mistake, with the reason on record")
  void answerTakenBack() {
    ASession session = helmetOn().with(failed(SCREWS, "damaged"));
    assertThat(session.refusal(passed(SCREWS))).isEqualTo("not-mended");
    assertThat(session.event(correct(SCREWS)))
        .isEqualTo(
            new EntryCorrected(
                ASession.SESSION, ASession.PLAYER, SCREWS, Optional.empty(), "wrong-button", AT));
    session.with(correct(SCREWS));
    assertThat(session.state().answers()).doesNotContainKey(SCREWS);
    assertThat(session.with(passed(SCREWS)).state().passed(SCREWS)).isTrue();
  }

  @Test
  @DisplayName("passes only when what was taken back is answered anew")
  void answeredAnew() {
    ASession session = allPassed().with(correct(SNUG));
    assertThat(session.refusal(pass())).isEqualTo("checks-open");
    assertThat(session.with(passed(SNUG)).with(pass()).state().status()).isEqualTo(Status.PASSED);
  }

  @Test
  @DisplayName("forgets a remedy that was not applied, and what it had voided stays void")
  void remedyTakenBack() {
    ASession session = helmetOn().with(passed(STRAP)).with(failed(SNUG, "loose"));
    session.with(adjust(SNUG, "add-air"));
    session.with(new Correct(SNUG, Optional.of("add-air"), "wrong-button", AT));
    assertThat(session.state().answers()).doesNotContainKeys(SNUG, STRAP);
    assertThat(ASession.tried(session.state(), SNUG, "add-air")).isFalse();
    session.with(failed(SNUG, "loose")).with(adjust(SNUG, "add-air"));
    assertThat(ASession.tried(session.state(), SNUG, "add-air")).isTrue();
  }

  @Test
  @DisplayName("takes back only the part of the remedy that was a mistake")
  void partTakenBack() {
    ASession session = helmetOn().with(failed(SCREWS, "loose")).with(adjust(SCREWS, "kit"));
    session.with(failed(STRAP, "loose")).with(adjust(STRAP, "new-strap"));
    session.with(new Correct(STRAP, Optional.of("new-strap"), "wrong-helmet", AT));
    assertThat(session.state().parts()).containsExactly("hardware-kit");
  }

  @Test
  @DisplayName("takes nothing back that was not entered, and nothing without a reason")
  void nothingToTakeBack() {
    ASession session = helmetOn().with(passed(SNUG));
    assertThat(session.refusal(correct(STRAP))).isEqualTo("nothing-to-correct");
    assertThat(session.refusal(correct("no-such-check"))).isEqualTo("check-unknown");
    assertThat(session.refusal(new Correct(SNUG, Optional.empty(), "felt like it", AT)))
        .isEqualTo("why");
    assertThat(session.refusal(new Correct(SNUG, Optional.of("add-air"), "wrong-button", AT)))
        .isEqualTo("nothing-to-correct");
  }

  @Test
  @DisplayName("passes over a remedy that is not possible, and names the part that is not there")
  void passedOver() {
    ASession session = helmetOn().with(failed(STRAP, "loose"));
    PassOver strap = new PassOver(STRAP, "new-strap", Optional.of("cup-m"), "no-part", AT);
    assertThat(session.event(strap))
        .isEqualTo(
            new RemedyPassedOver(
                ASession.SESSION,
                ASession.PLAYER,
                STRAP,
                "new-strap",
                Optional.of("cup-m"),
                "no-part",
                AT));
    session.with(strap);
    assertThat(session.refusal(strap)).isEqualTo("not-left");
    assertThat(session.refusal(adjust(STRAP, "new-strap"))).isEqualTo("tried-before");
    assertThat(Needs.of(session.state(), SmallProtocol.version(1), ASession.here(ASession.SIZES)))
        .containsExactly(Need.part("cup-m"));
  }

  @Test
  @DisplayName("passes over nothing that is not asked for")
  void notPassedOver() {
    ASession session = helmetOn();
    PassOver air = new PassOver(SNUG, "add-air", Optional.empty(), "not-possible", AT);
    assertThat(session.refusal(air)).isEqualTo("not-failed");
    session.with(failed(SNUG, "loose"));
    assertThat(session.refusal(new PassOver(SNUG, "add-air", Optional.empty(), "no-part", AT)))
        .isEqualTo("item");
    assertThat(session.refusal(new PassOver(SNUG, "add-air", Optional.empty(), "tired", AT)))
        .isEqualTo("why");
    assertThat(session.refusal(new PassOver("none", "add-air", Optional.empty(), "no-part", AT)))
        .isEqualTo("not-failed");
    PassOver other = new PassOver(SNUG, "let-air-out", Optional.empty(), "not-possible", AT);
    assertThat(session.refusal(other)).isEqualTo("not-left");
    PassOver strange = new PassOver(STRAP, "new-strap", Optional.of("kit"), "no-part", AT);
    session.with(failed(STRAP, "loose"));
    assertThat(((RemedyPassedOver) session.event(strange)).item()).contains("cup-s");
  }

  @Test
  @DisplayName("can have its pass taken back with a reason, and no other end")
  void passTakenBack() {
    TakeBackPass back = new TakeBackPass("wrong-player", AT);
    ASession session = allPassed().with(pass());
    assertThat(session.event(back))
        .isEqualTo(new PassTakenBack(ASession.SESSION, ASession.PLAYER, TAG, "wrong-player", AT));
    assertThat(session.refusal(new TakeBackPass("", AT))).isEqualTo("why");
    session.with(back);
    assertThat(session.state().status()).isEqualTo(Status.ABANDONED);
    assertThat(session.refusal(back)).isEqualTo("not-passed");
    assertThat(allPassed().refusal(back)).isEqualTo("not-passed");
  }
}
