package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.fitting.session.ASession.AT;
import static org.tapeline.fitting.session.ASession.PLAYER;
import static org.tapeline.fitting.session.ASession.SESSION;
import static org.tapeline.fitting.session.ASession.TAG;
import static org.tapeline.fitting.session.ASession.adjust;
import static org.tapeline.fitting.session.ASession.allPassed;
import static org.tapeline.fitting.session.ASession.failed;
import static org.tapeline.fitting.session.ASession.helmetOn;
import static org.tapeline.fitting.session.ASession.known;
import static org.tapeline.fitting.session.ASession.opened;
import static org.tapeline.fitting.session.ASession.pass;
import static org.tapeline.fitting.session.ASession.putOn;
import static org.tapeline.fitting.session.SmallProtocol.SCREWS;
import static org.tapeline.fitting.session.SmallProtocol.SNUG;

import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.session.Decision.Refused;
import org.tapeline.fitting.session.FitSessionCommand.KnownHelmet;
import org.tapeline.fitting.session.FitSessionCommand.TryHelmet;
import org.tapeline.fitting.session.FitSessionEvent.HelmetTried;

@DisplayName("A helmet on the head")
class HelmetRulesTest {

  private static TryHelmet attempt(KnownHelmet helmet, String label) {
    return new TryHelmet(TAG, Optional.of(helmet), label, AT);
  }

  private static KnownHelmet at(String place, String refusal) {
    return new KnownHelmet(
        TAG, "model-a", "youth-medium", place, Optional.of(refusal).filter(r -> !r.isEmpty()));
  }

  @Test
  @DisplayName("is taken when its label says the recorded size")
  void taken() {
    assertThat(opened().event(putOn(TAG)))
        .isEqualTo(new HelmetTried(SESSION, PLAYER, TAG, "model-a", "youth-medium", AT));
  }

  @Test
  @DisplayName("of an unknown tag is refused")
  void unknown() {
    TryHelmet attempt = new TryHelmet("LV9999", Optional.empty(), "youth-medium", AT);
    assertThat(opened().refusal(attempt)).isEqualTo("helmet-unknown");
  }

  @Test
  @DisplayName("whose label says another size is refused, in the words of the record")
  void sizeLabel() {
    Decision decision = opened().asked(attempt(known(TAG), "youth-large"));
    assertThat(decision).isInstanceOf(Refused.class);
    Refused refused = (Refused) decision;
    assertThat(refused.code()).isEqualTo("size-label");
    assertThat(refused.field()).isEqualTo("sizeLabel");
    assertThat(refused.sentence()).contains("youth medium");
  }

  @Test
  @DisplayName("that this player may not have is refused with the reason")
  void notFree() {
    String why = "This helmet is kept for another player. Take another one.";
    Decision decision = opened().asked(attempt(at("NORTH", why), "youth-medium"));
    assertThat(decision).isEqualTo(new Refused("helmet-not-free", "tag", why));
  }

  @Test
  @DisplayName("that is at another place is refused, naming both")
  void elsewhere() {
    Decision decision = opened().asked(attempt(at("SOUTH", ""), "youth-medium"));
    assertThat(ASession.refusal(decision)).isEqualTo("helmet-elsewhere");
    assertThat(((Refused) decision).sentence()).contains("SOUTH", "NORTH");
  }

  @Test
  @DisplayName("that was pulled, moved or forgotten meanwhile is refused at the pass")
  void meanwhile() {
    assertThat(allPassed().refusal(pass(Optional.empty()))).isEqualTo("helmet-unknown");
    assertThat(allPassed().refusal(pass(Optional.of(at("SOUTH", "")))))
        .isEqualTo("helmet-elsewhere");
    assertThat(allPassed().refusal(pass(Optional.of(at("NORTH", "In quarantine.")))))
        .isEqualTo("helmet-not-free");
  }

  @Test
  @DisplayName("that replaces another one starts with no answer")
  void another() {
    assertThat(allPassed().with(putOn("LV0002")).state().answers()).isEmpty();
  }

  @Test
  @DisplayName("that comes back has no passed check, also when it was on all the time")
  void back() {
    assertThat(allPassed().with(putOn("LV0002")).with(putOn(TAG)).state().answers()).isEmpty();
    assertThat(allPassed().with(putOn(TAG)).state().answers()).isEmpty();
  }

  @Test
  @DisplayName("that comes back keeps what was found wrong, what was tried and its parts")
  void keeps() {
    FitSession state =
        helmetOn()
            .with(failed(SCREWS, "loose"))
            .with(adjust(SCREWS, "kit"))
            .with(failed(SNUG, "tight"))
            .with(putOn("LV0002"))
            .with(putOn(TAG))
            .state();
    assertThat(state.failed(SNUG)).isTrue();
    assertThat(state.finding(SNUG)).isEqualTo("tight");
    assertThat(ASession.tried(state, SCREWS, "kit")).isTrue();
    assertThat(state.parts()).containsExactly("hardware-kit");
  }

  @Test
  @DisplayName("has nothing of what was done on another one")
  void notOfAnother() {
    FitSession state =
        helmetOn()
            .with(failed(SCREWS, "loose"))
            .with(adjust(SCREWS, "kit"))
            .with(failed(SNUG, "tight"))
            .with(putOn("LV0002"))
            .state();
    assertThat(state.failed(SNUG)).isFalse();
    assertThat(ASession.tried(state, SCREWS, "kit")).isFalse();
    assertThat(state.parts()).isEmpty();
  }
}
