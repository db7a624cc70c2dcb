package org.tapeline.fitting.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.signoff.SignOffCommand.Lapse;
import org.tapeline.fitting.signoff.SignOffCommand.SignOffPlayer;
import org.tapeline.fitting.signoff.SignOffCommand.Withdraw;
import org.tapeline.fitting.signoff.SignOffCommand.WithdrawHelmet;
import org.tapeline.fitting.signoff.SignOffCommand.WithdrawSession;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffLapsed;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffWithdrawn;
import org.tapeline.fitting.signoff.SignOffEvent.SignedOff;

@DisplayName("A sign-off")
class SignOffDeciderTest {
  private static final UUID PLAYER = UUID.randomUUID();
  private static final UUID SESSION = UUID.randomUUID();
  private static final UUID LATER = UUID.randomUUID();
  private static final Instant AT = Instant.parse("2026-08-01T15:06:00Z");
  private static final SignedOff SIGNED_OFF = signedOff(SESSION, "LV0001");
  private static final SignOffWithdrawn WITHDRAWN =
      new SignOffWithdrawn(PLAYER, "LV0001", "damage", AT);
  private static final SignOffLapsed LAPSED = new SignOffLapsed(PLAYER, "LV0001", "overdue", AT);

  private static SignedOff signedOff(UUID session, String tag) {
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
        AT);
  }

  private static SignOffPlayer signOff(UUID session, String tag) {
    return new SignOffPlayer(
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
        AT);
  }

  private static SignOff given(SignOffEvent... events) {
    SignOff state = SignOff.NONE;
    for (SignOffEvent event : events) {
      state = SignOffDecider.evolve(state, event);
    }
    return state;
  }

  private static List<SignOffEvent> when(SignOffCommand command, SignOffEvent... given) {
    return SignOffDecider.decide(given(given), command);
  }

  @Test
  @DisplayName("follows a pass, also after an earlier one, a withdrawal or a lapse")
  void signedOff() {
    SignOffPlayer pass = signOff(LATER, "LV0002");
    SignedOff expected = signedOff(LATER, "LV0002");
    assertThat(when(pass)).containsExactly(expected);
    assertThat(when(pass, SIGNED_OFF)).containsExactly(expected);
    assertThat(when(pass, SIGNED_OFF, WITHDRAWN)).containsExactly(expected);
    assertThat(when(pass, SIGNED_OFF, LAPSED)).containsExactly(expected);
  }

  @Test
  @DisplayName("is withdrawn for its helmet, whichever it is")
  void withdrawn() {
    assertThat(when(new Withdraw("fit-failed", AT), SIGNED_OFF))
        .containsExactly(new SignOffWithdrawn(PLAYER, "LV0001", "fit-failed", AT));
  }

  @Test
  @DisplayName("is withdrawn with its own helmet and stands when another one is pulled")
  void helmetPulled() {
    assertThat(when(new WithdrawHelmet("LV0001", "damage", AT), SIGNED_OFF))
        .containsExactly(WITHDRAWN);
    assertThat(when(new WithdrawHelmet("LV0002", "damage", AT), SIGNED_OFF)).isEmpty();
    assertThat(
            when(
                new WithdrawHelmet("LV0001", "damage", AT), SIGNED_OFF, signedOff(LATER, "LV0002")))
        .isEmpty();
  }

  @Test
  @DisplayName("is withdrawn with its own session and stands when a refusal is late")
  void sessionRefused() {
    assertThat(when(new WithdrawSession(SESSION, "issue-refused", AT), SIGNED_OFF))
        .containsExactly(new SignOffWithdrawn(PLAYER, "LV0001", "issue-refused", AT));
    assertThat(
            when(
                new WithdrawSession(SESSION, "issue-refused", AT),
                SIGNED_OFF,
                signedOff(LATER, "LV0001")))
        .isEmpty();
  }

  @Test
  @DisplayName("lapses with its own session and stands when it was fitted anew meanwhile")
  void lapsed() {
    Lapse lapse = new Lapse(SESSION, "recheck-overdue", AT);
    assertThat(when(lapse, SIGNED_OFF))
        .containsExactly(new SignOffLapsed(PLAYER, "LV0001", "recheck-overdue", AT));
    assertThat(when(lapse, SIGNED_OFF, signedOff(LATER, "LV0001"))).isEmpty();
  }

  @Test
  @DisplayName("that does not hold is not withdrawn: never given, withdrawn before, or lapsed")
  void nothingToWithdraw() {
    for (SignOffCommand command :
        List.of(
            new Withdraw("fit-failed", AT),
            new WithdrawHelmet("LV0001", "damage", AT),
            new Lapse(SESSION, "recheck-overdue", AT),
            new WithdrawSession(SESSION, "issue-refused", AT))) {
      assertThat(when(command)).as("%s", command).isEmpty();
      assertThat(when(command, SIGNED_OFF, WITHDRAWN)).as("%s", command).isEmpty();
      assertThat(when(command, SIGNED_OFF, LAPSED)).as("%s", command).isEmpty();
    }
  }
}
