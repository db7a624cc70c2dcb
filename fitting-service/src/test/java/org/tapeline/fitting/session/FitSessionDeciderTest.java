package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.fitting.session.ASession.AT;
import static org.tapeline.fitting.session.ASession.OPEN;
import static org.tapeline.fitting.session.ASession.PLAYER;
import static org.tapeline.fitting.session.ASession.SESSION;
import static org.tapeline.fitting.session.ASession.TAG;
import static org.tapeline.fitting.session.ASession.abandon;
import static org.tapeline.fitting.session.ASession.adjust;
import static org.tapeline.fitting.session.ASession.allPassed;
import static org.tapeline.fitting.session.ASession.fail;
import static org.tapeline.fitting.session.ASession.failed;
import static org.tapeline.fitting.session.ASession.helmetOn;
import static org.tapeline.fitting.session.ASession.notOpened;
import static org.tapeline.fitting.session.ASession.opened;
import static org.tapeline.fitting.session.ASession.pass;
import static org.tapeline.fitting.session.ASession.passed;
import static org.tapeline.fitting.session.ASession.putOn;
import static org.tapeline.fitting.session.ASession.refusal;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.session.Decision.Accepted;
import org.tapeline.fitting.session.FitSession.Status;
import org.tapeline.fitting.session.FitSessionEvent.SessionAbandoned;
import org.tapeline.fitting.session.FitSessionEvent.SessionOpened;

@DisplayName("A fit session")
class FitSessionDeciderTest {
  private static final Protocol NEWER = SmallProtocol.version(2);
  private static final List<FitSessionCommand> AFTER_OPENING =
      List.of(
          putOn(TAG),
          passed(SmallProtocol.SNUG),
          adjust(SmallProtocol.SNUG, "add-air"),
          pass(),
          fail(Need.part("cup-s")),
          abandon("weather"));

  @Test
  @DisplayName("is opened with the protocol in force")
  void open() {
    assertThat(notOpened().event(OPEN))
        .isEqualTo(
            new SessionOpened(
                SESSION,
                PLAYER,
                "NORTH",
                "U10-HAWKS",
                "small",
                1,
                "fitter.north",
                OPEN.advised(),
                AT));
  }

  @Test
  @DisplayName("is opened once, also when it is over")
  void once() {
    assertThat(opened().refusal(OPEN)).isEqualTo("session-exists");
    assertThat(opened().with(abandon("mistake")).refusal(OPEN)).isEqualTo("session-exists");
  }

  @Test
  @DisplayName("takes nothing before it is opened")
  void notBefore() {
    for (FitSessionCommand command : AFTER_OPENING) {
      assertThat(notOpened().refusal(command)).as("%s", command).isEqualTo("session-not-open");
    }
  }

  @Test
  @DisplayName("takes nothing after a pass, a fail or an end without a result")
  void notAfter() {
    for (FitSessionCommand command : AFTER_OPENING) {
      for (FitSessionCommand end : List.of(pass(), fail(Need.part("cup-s")), abandon("weather"))) {
        assertThat(allPassed().with(end).refusal(command))
            .as("%s after %s", command, end)
            .isEqualTo("session-not-open");
      }
    }
  }

  @Test
  @DisplayName("ends without a result for a reason of the list only")
  void abandoned() {
    for (String why : List.of("player-left", "weather", "interrupted", "mistake")) {
      assertThat(helmetOn().event(abandon(why)))
          .isEqualTo(new SessionAbandoned(SESSION, PLAYER, why, AT));
    }
    assertThat(helmetOn().refusal(abandon(""))).isEqualTo("why");
    assertThat(helmetOn().refusal(abandon("Weather"))).isEqualTo("why");
  }

  @Test
  @DisplayName("tells by its events how it ended")
  void status() {
    assertThat(opened().state().status()).isEqualTo(Status.OPEN);
    assertThat(allPassed().with(pass()).state().status()).isEqualTo(Status.PASSED);
    assertThat(opened().with(fail(Need.part("cup-s"))).state().status()).isEqualTo(Status.FAILED);
    assertThat(opened().with(abandon("weather")).state().status()).isEqualTo(Status.ABANDONED);
  }

  @Test
  @DisplayName("takes no answer, remedy or pass by another version of the protocol")
  void otherVersion() {
    for (FitSessionCommand command :
        List.of(passed(SmallProtocol.SNUG), adjust(SmallProtocol.SNUG, "add-air"), pass())) {
      assertThat(refusal(allPassed().asked(command, NEWER)))
          .as("%s", command)
          .isEqualTo("protocol-changed");
    }
  }

  @Test
  @DisplayName("takes no pass by another protocol of the same version")
  void otherProtocol() {
    Protocol one = SmallProtocol.version(1);
    Protocol other =
        new Protocol(
            "strict",
            1,
            one.title(),
            one.hoursAnswersHold(),
            one.checks(),
            one.usual(),
            one.models());
    assertThat(refusal(allPassed().asked(pass(), other))).isEqualTo("protocol-changed");
  }

  @Test
  @DisplayName("can be ended without a fit when the protocol has changed")
  void endedUnderAnotherVersion() {
    ASession session = helmetOn().with(failed(SmallProtocol.SNUG, "loose"));
    assertThat(session.asked(fail(), NEWER)).isInstanceOf(Accepted.class);
    assertThat(session.asked(abandon("interrupted"), NEWER)).isInstanceOf(Accepted.class);
  }
}
