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
import static org.tapeline.fitting.session.ASession.opened;
import static org.tapeline.fitting.session.ASession.openedWith;
import static org.tapeline.fitting.session.ASession.passed;
import static org.tapeline.fitting.session.ASession.putOn;
import static org.tapeline.fitting.session.SmallProtocol.NOSE;
import static org.tapeline.fitting.session.SmallProtocol.SCREWS;
import static org.tapeline.fitting.session.SmallProtocol.SNUG;
import static org.tapeline.fitting.session.SmallProtocol.STRAP;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.fitting.protocol.Remedy;
import org.tapeline.fitting.session.FitSessionCommand.Adjust;
import org.tapeline.fitting.session.FitSessionCommand.KnownHelmet;
import org.tapeline.fitting.session.FitSessionCommand.TryHelmet;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;

@DisplayName("A remedy")
class AdjustmentTest {

  private static Adjust newStrap(Optional<String> item) {
    return new Adjust(STRAP, "new-strap", item, AT);
  }

  private static AdjustmentMade made(FitSessionEvent event) {
    return (AdjustmentMade) event;
  }

  @Test
  @DisplayName("for a check that failed is applied and voids all that it touches")
  void applied() {
    assertThat(allPassed().with(failed(SNUG, "loose")).event(adjust(SNUG, "add-air")))
        .isEqualTo(
            new AdjustmentMade(
                SESSION, PLAYER, SNUG, "add-air", Optional.empty(), List.of(SNUG, STRAP), AT));
  }

  @Test
  @DisplayName("leaves the answers that it does not touch")
  void leaves() {
    ASession session = allPassed().with(failed(SNUG, "loose")).with(adjust(SNUG, "add-air"));
    assertThat(session.state().answers().keySet()).containsExactlyInAnyOrder(SCREWS, NOSE);
  }

  @Test
  @DisplayName("voids the check that it is for, also when it lists none")
  void own() {
    ASession session = allPassed().with(failed(STRAP, "loose"));
    assertThat(made(session.event(newStrap(Optional.empty()))).voids()).containsExactly(STRAP);
  }

  @Test
  @DisplayName("that no check or another check has is refused")
  void unknown() {
    ASession session = helmetOn().with(failed(SNUG, "loose"));
    assertThat(session.refusal(adjust(SNUG, "hammer"))).isEqualTo("remedy-unknown");
    assertThat(session.refusal(adjust(SNUG, "tighten"))).isEqualTo("remedy-unknown");
    assertThat(session.refusal(adjust("comfort", "add-air"))).isEqualTo("remedy-unknown");
  }

  @Test
  @DisplayName("goes with a check that failed, on the helmet that is on")
  void notFailed() {
    assertThat(opened().refusal(adjust(SNUG, "add-air"))).isEqualTo("not-failed");
    assertThat(helmetOn().refusal(adjust(SNUG, "add-air"))).isEqualTo("not-failed");
    assertThat(helmetOn().with(passed(SNUG)).refusal(adjust(SNUG, "add-air")))
        .isEqualTo("not-failed");
    assertThat(
            helmetOn()
                .with(failed(SNUG, "loose"))
                .with(putOn("LV0002"))
                .refusal(adjust(SNUG, "add-air")))
        .isEqualTo("not-failed");
  }

  @Test
  @DisplayName("is tried once on a helmet, and once more on another")
  void once() {
    ASession session =
        helmetOn()
            .with(failed(SNUG, "loose"))
            .with(adjust(SNUG, "add-air"))
            .with(failed(SNUG, "loose"));
    assertThat(session.refusal(adjust(SNUG, "add-air"))).isEqualTo("tried-before");
    session.with(putOn("LV0002")).with(failed(SNUG, "loose")).with(adjust(SNUG, "add-air"));
    session.with(putOn(TAG)).with(failed(SNUG, "loose"));
    assertThat(session.refusal(adjust(SNUG, "add-air"))).isEqualTo("tried-before");
  }

  @Test
  @DisplayName("takes the usual part where none is named, or one of its own")
  void parts() {
    ASession session = helmetOn().with(failed(STRAP, "loose"));
    assertThat(made(session.event(newStrap(Optional.empty()))).item()).contains("cup-s");
    assertThat(made(session.event(newStrap(Optional.of("cup-m")))).item()).contains("cup-m");
    assertThat(session.with(newStrap(Optional.of("cup-m"))).state().parts())
        .containsExactly("cup-m");
  }

  @Test
  @DisplayName("takes no part of another remedy, and none where it uses none")
  void otherParts() {
    ASession session = helmetOn().with(failed(STRAP, "loose"));
    assertThat(session.refusal(newStrap(Optional.of("hardware-kit")))).isEqualTo("item");
    Adjust tighten = new Adjust(STRAP, "tighten", Optional.of("cup-s"), AT);
    assertThat(session.refusal(tighten)).isEqualTo("item");
  }

  @Test
  @DisplayName("of the youth football protocol never leaves the check that it is for answered")
  void delivered() {
    Protocol protocol = Protocols.builtIn();
    for (Check check : protocol.checks()) {
      for (Check.Way way : check.ways()) {
        for (Remedy remedy : way.remedies()) {
          ASession session = openedWith(protocol).with(putOnUnknownModel()).withAllPassed();
          session.with(failed(check.id(), way.finding())).with(adjust(check.id(), remedy.id()));
          assertThat(session.state().answers())
              .as("%s, %s", check.id(), remedy.id())
              .doesNotContainKey(check.id());
        }
      }
    }
  }

  /** Of which nobody knows what it has: every remedy is possible. */
  private static TryHelmet putOnUnknownModel() {
    KnownHelmet helmet = new KnownHelmet(TAG, "model-x", "youth-medium", "NORTH", Optional.empty());
    return new TryHelmet(TAG, Optional.of(helmet), "youth-medium", AT);
  }

  /** Air lifts the shell and so moves the straps with it: common practice, no published source. */
  @Test
  @DisplayName("that changes the air of the liner leaves only the shell's checks answered")
  void air() {
    ASession session = openedWith(Protocols.builtIn()).with(putOn(TAG)).withAllPassed();
    session.with(failed("snug", "loose")).with(adjust("snug", "add-air"));
    assertThat(session.state().answers().keySet())
        .containsExactlyInAnyOrder(
            "labels",
            "good-condition",
            "padding-in-place",
            "snaps-and-screws",
            "certification-mark");
  }

  @Test
  @DisplayName("at the left jaw leaves the right jaw answered, but neither snugness nor the strap")
  void jaw() {
    ASession session = openedWith(Protocols.builtIn()).with(putOn(TAG)).withAllPassed();
    session
        .with(failed("jaw-pad-left", "loose"))
        .with(adjust("jaw-pad-left", "thicker-left-jaw-pad"));
    assertThat(session.state().answers().keySet())
        .contains("jaw-pad-right")
        .doesNotContain("jaw-pad-left", "snug", "strap-cup", "strap-even", "strap-tight");
  }
}
