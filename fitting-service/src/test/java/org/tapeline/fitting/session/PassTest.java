package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.fitting.session.ASession.AT;
import static org.tapeline.fitting.session.ASession.CONDITIONS;
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
import static org.tapeline.fitting.session.ASession.passed;
import static org.tapeline.fitting.session.ASession.putOn;
import static org.tapeline.fitting.session.SmallProtocol.HOURS;
import static org.tapeline.fitting.session.SmallProtocol.NOSE;
import static org.tapeline.fitting.session.SmallProtocol.SCREWS;
import static org.tapeline.fitting.session.SmallProtocol.SNUG;
import static org.tapeline.fitting.session.SmallProtocol.STRAP;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.session.Decision.Refused;
import org.tapeline.fitting.session.FitSessionCommand.Pass;
import org.tapeline.fitting.session.FitSessionEvent.CheckPassed;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;

@DisplayName("A pass")
class PassTest {

  private static Pass passAt(Instant at) {
    return new Pass(Optional.of(known(TAG)), List.of(), CONDITIONS, Optional.empty(), at);
  }

  private static Pass passListing(String... parts) {
    return new Pass(Optional.of(known(TAG)), List.of(parts), CONDITIONS, Optional.empty(), AT);
  }

  private static Pass passAfterEndAt(Instant failed) {
    return new Pass(Optional.of(known(TAG)), List.of(), CONDITIONS, Optional.of(failed), AT);
  }

  private static List<String> parts(FitSessionEvent event) {
    return ((FitPassed) event).parts();
  }

  @Test
  @DisplayName("says who, which helmet, by which protocol and when each check was passed")
  void says() {
    List<CheckPassed> checks =
        Stream.of(SCREWS, SNUG, STRAP, NOSE).map(id -> new CheckPassed(id, "pass", AT)).toList();
    assertThat(allPassed().event(pass()))
        .isEqualTo(
            new FitPassed(
                SESSION,
                PLAYER,
                "NORTH",
                "U10-HAWKS",
                TAG,
                "model-a",
                "youth-medium",
                "fitter.north",
                "small",
                1,
                List.of(),
                CONDITIONS,
                checks,
                AT));
  }

  @Test
  @DisplayName("needs a helmet on the head")
  void noHelmet() {
    assertThat(opened().refusal(pass())).isEqualTo("no-helmet");
  }

  @Test
  @DisplayName("is refused while one check is open, and names it")
  void open() {
    ASession session = helmetOn().with(passed(SCREWS)).with(passed(SNUG)).with(passed(STRAP));
    Decision decision = session.asked(pass());
    assertThat(ASession.refusal(decision)).isEqualTo("checks-open");
    assertThat(((Refused) decision).sentence())
        .contains("Is nose right?")
        .doesNotContain("screws", "snug", "strap");
    assertThat(session.with(passed(NOSE)).event(pass())).isInstanceOf(FitPassed.class);
  }

  @Test
  @DisplayName("is refused while a check is failed")
  void failedCheck() {
    assertThat(allPassed().with(failed(NOSE, "tight")).refusal(pass())).isEqualTo("checks-open");
  }

  @Test
  @DisplayName("is refused until every check that a remedy voided was passed again")
  void voided() {
    ASession session = allPassed().with(failed(SNUG, "loose")).with(adjust(SNUG, "add-air"));
    assertThat(session.refusal(pass())).isEqualTo("checks-open");
    session.with(passed(SNUG));
    assertThat(session.refusal(pass())).isEqualTo("checks-open");
    assertThat(session.with(passed(STRAP)).event(pass())).isInstanceOf(FitPassed.class);
  }

  @Test
  @DisplayName("is refused after the helmet was taken off and put on again")
  void helmetChanged() {
    ASession session = allPassed().with(putOn("LV0002")).with(putOn(TAG));
    assertThat(session.refusal(pass())).isEqualTo("checks-open");
  }

  @Test
  @DisplayName("takes answers that are just as old as they may be, and none that are older")
  void answersOld() {
    Instant oldest = AT.minus(Duration.ofHours(HOURS));
    ASession session = allPassed().with(passed(SNUG, oldest));
    assertThat(session.event(passAt(AT))).isInstanceOf(FitPassed.class);
    assertThat(session.refusal(passAt(AT.plusMillis(1)))).isEqualTo("answers-old");
  }

  @Test
  @DisplayName("is refused when another session of the player ended since the first answer")
  void endedElsewhere() {
    assertThat(allPassed().refusal(passAfterEndAt(AT))).isEqualTo("ended-elsewhere");
    assertThat(allPassed().refusal(passAfterEndAt(AT.plusSeconds(1)))).isEqualTo("ended-elsewhere");
    assertThat(allPassed().event(passAfterEndAt(AT.minusMillis(1)))).isInstanceOf(FitPassed.class);
  }

  @Test
  @DisplayName("counts the parts of the remedies, and what is listed beyond them")
  void parts() {
    ASession session = helmetOn().with(failed(SCREWS, "loose")).with(adjust(SCREWS, "kit"));
    session.withAllPassed();
    assertThat(parts(session.event(pass()))).containsExactly("hardware-kit");
    assertThat(parts(session.event(passListing("hardware-kit", "valve"))))
        .containsExactly("hardware-kit", "valve");
    assertThat(parts(session.event(passListing("hardware-kit", "hardware-kit"))))
        .containsExactly("hardware-kit", "hardware-kit");
  }

  @Test
  @DisplayName("counts no part that was put into another helmet")
  void partsOfAnother() {
    ASession session = helmetOn().with(putOn("LV0002"));
    session.with(failed(SCREWS, "loose")).with(adjust(SCREWS, "kit"));
    session.with(putOn(TAG)).withAllPassed();
    assertThat(parts(session.event(pass()))).isEmpty();
  }

  @Test
  @DisplayName("takes codes of parts only")
  void partCodes() {
    assertThat(allPassed().refusal(passListing("Jaw pad"))).isEqualTo("parts");
    assertThat(allPassed().refusal(passListing(""))).isEqualTo("parts");
  }
}
