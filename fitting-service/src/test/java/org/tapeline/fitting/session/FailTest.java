package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.fitting.session.ASession.AT;
import static org.tapeline.fitting.session.ASession.PLAYER;
import static org.tapeline.fitting.session.ASession.SESSION;
import static org.tapeline.fitting.session.ASession.SIZES;
import static org.tapeline.fitting.session.ASession.TAG;
import static org.tapeline.fitting.session.ASession.adjust;
import static org.tapeline.fitting.session.ASession.allPassed;
import static org.tapeline.fitting.session.ASession.fail;
import static org.tapeline.fitting.session.ASession.failed;
import static org.tapeline.fitting.session.ASession.helmetOn;
import static org.tapeline.fitting.session.ASession.notOpened;
import static org.tapeline.fitting.session.ASession.opened;
import static org.tapeline.fitting.session.ASession.putOn;
import static org.tapeline.fitting.session.SmallProtocol.NOSE;
import static org.tapeline.fitting.session.SmallProtocol.SCREWS;
import static org.tapeline.fitting.session.SmallProtocol.SNUG;
import static org.tapeline.fitting.session.SmallProtocol.STRAP;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.session.FitSessionCommand.Fail;
import org.tapeline.fitting.session.FitSessionCommand.KnownHelmet;
import org.tapeline.fitting.session.FitSessionCommand.Open;
import org.tapeline.fitting.session.FitSessionCommand.RecordCheck;
import org.tapeline.fitting.session.FitSessionCommand.TryHelmet;
import org.tapeline.fitting.session.FitSessionEvent.FitFailed;

@DisplayName("A fail")
class FailTest {
  private static final Need SMALLER = Need.helmet("model-a", "youth-small");
  private static final Need LARGER = Need.helmet("model-a", "youth-large");
  private static final Need SAME = Need.helmet("model-a", "youth-medium");
  private static final Need OTHER_MODEL = Need.helmet("model-b", "small");

  private static List<Need> needs(ASession session, List<String> sizes) {
    Here here =
        new Here(
            Map.of(),
            List.of(),
            Map.of("model-a", sizes),
            session.state().advised(),
            Optional.empty());
    return ((FitFailed) session.event(new Fail(List.of(), here, AT))).needs();
  }

  private static List<Need> needs(ASession session) {
    return needs(session, SIZES);
  }

  private static ASession ofSize(String size) {
    KnownHelmet helmet = new KnownHelmet(TAG, "model-a", size, "NORTH", Optional.empty());
    return opened().with(new TryHelmet(TAG, Optional.of(helmet), size, AT));
  }

  private static ASession adviceForOneModelOnly() {
    Open o = ASession.OPEN;
    List<FitSessionEvent.AdvisedSize> one = o.advised().subList(0, 1);
    return notOpened()
        .with(new Open(SESSION, PLAYER, o.field(), o.team(), o.fitter(), one, AT))
        .with(putOn(TAG));
  }

  @Test
  @DisplayName("says the helmet, the checks that failed in their order, and what is needed")
  void says() {
    ASession session = helmetOn().with(failed(STRAP, "loose")).with(failed(SCREWS, "loose"));
    assertThat(session.event(fail()))
        .isEqualTo(
            new FitFailed(
                SESSION,
                PLAYER,
                "NORTH",
                "U10-HAWKS",
                Optional.of(TAG),
                Optional.of("model-a"),
                Optional.of("youth-medium"),
                "fitter.north",
                List.of(SCREWS, STRAP),
                List.of(Need.part("hardware-kit"), Need.part("cup-s")),
                AT));
  }

  @Test
  @DisplayName("without a check that failed is refused unless the fitter says what is needed")
  void withoutAFailedCheck() {
    assertThat(opened().refusal(fail())).isEqualTo("needs-unknown");
    assertThat(helmetOn().refusal(fail())).isEqualTo("needs-unknown");
    assertThat(allPassed().refusal(fail())).isEqualTo("needs-unknown");
    assertThat(((FitFailed) allPassed().event(fail(LARGER))).needs()).containsExactly(LARGER);
  }

  @Test
  @DisplayName("of a check that a remedy voided says nothing")
  void voided() {
    ASession session = helmetOn().with(failed(SNUG, "loose")).with(adjust(SNUG, "add-air"));
    assertThat(session.refusal(fail())).isEqualTo("needs-unknown");
  }

  @Test
  @DisplayName("before any helmet was tried names none")
  void noHelmet() {
    FitFailed event = (FitFailed) opened().event(fail(SMALLER));
    assertThat(event.tag()).isEmpty();
    assertThat(event.model()).isEmpty();
    assertThat(event.size()).isEmpty();
    assertThat(event.failedChecks()).isEmpty();
  }

  @Test
  @DisplayName("needs what the fitter says, also against the checks")
  void fitterSays() {
    ASession session = helmetOn().with(failed(SNUG, "loose"));
    assertThat(((FitFailed) session.event(fail(LARGER))).needs()).containsExactly(LARGER);
  }

  @Test
  @DisplayName("of a loose helmet needs the next smaller size, of a tight one the next larger")
  void nextSize() {
    assertThat(needs(helmetOn().with(failed(SNUG, "loose")))).containsExactly(SMALLER);
    assertThat(needs(helmetOn().with(failed(SNUG, "tight")))).containsExactly(LARGER);
  }

  @Test
  @DisplayName("with a finding that the check does not name, or none, needs as for its usual one")
  void usualFinding() {
    assertThat(needs(helmetOn().with(failed(SNUG, "other")))).containsExactly(SMALLER);
    RecordCheck none =
        new RecordCheck(SNUG, false, Optional.empty(), Optional.empty(), Optional.empty(), AT);
    assertThat(needs(helmetOn().with(none))).containsExactly(SMALLER);
  }

  @Test
  @DisplayName("at the end of the model's sizes needs the size advised for another model")
  void noSuchSize() {
    assertThat(needs(ofSize("youth-small").with(failed(SNUG, "loose"))))
        .containsExactly(OTHER_MODEL);
    assertThat(needs(ofSize("youth-large").with(failed(SNUG, "tight"))))
        .containsExactly(OTHER_MODEL);
  }

  @Test
  @DisplayName("of a model whose sizes are not known guesses no size of it")
  void sizesNotKnown() {
    assertThat(needs(helmetOn().with(failed(SNUG, "loose")), List.of()))
        .containsExactly(OTHER_MODEL);
    assertThat(needs(helmetOn().with(failed(SNUG, "tight")), List.of("other-size")))
        .containsExactly(OTHER_MODEL);
  }

  @Test
  @DisplayName("of a shape that does not suit needs another model, else this one again")
  void otherModel() {
    assertThat(needs(helmetOn().with(failed(NOSE, "tight")))).containsExactly(OTHER_MODEL);
    assertThat(needs(adviceForOneModelOnly().with(failed(NOSE, "tight")))).containsExactly(SAME);
  }

  @Test
  @DisplayName("of a helmet at fault needs another of the same size")
  void sameSize() {
    assertThat(needs(helmetOn().with(failed(SCREWS, "damaged")))).containsExactly(SAME);
  }

  @Test
  @DisplayName("of a helmet at fault that does not fit either needs the size that fits")
  void faultAndSize() {
    ASession session = helmetOn().with(failed(SCREWS, "damaged")).with(failed(SNUG, "tight"));
    assertThat(needs(session)).containsExactly(LARGER);
  }

  @Test
  @DisplayName("needs no part for a helmet that is not worn any more")
  void helmetOverPart() {
    ASession session = helmetOn().with(failed(STRAP, "loose")).with(failed(SNUG, "loose"));
    assertThat(needs(session)).containsExactly(SMALLER);
  }
}
