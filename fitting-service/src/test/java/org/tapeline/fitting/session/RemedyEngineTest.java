package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.fitting.session.ASession.AT;
import static org.tapeline.fitting.session.ASession.TAG;
import static org.tapeline.fitting.session.ASession.adjust;
import static org.tapeline.fitting.session.ASession.failed;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.fitting.session.FitSessionCommand.KnownHelmet;
import org.tapeline.fitting.session.FitSessionCommand.PassOver;
import org.tapeline.fitting.session.FitSessionCommand.Pause;
import org.tapeline.fitting.session.FitSessionCommand.TryHelmet;
import org.tapeline.fitting.session.FitSessionEvent.AdvisedSize;
import org.tapeline.fitting.session.Here.FreeHelmet;

/** The remedies themselves and their order are common practice, no source. */
@DisplayName("What is proposed next")
class RemedyEngineTest {
  private static final Protocol PROTOCOL = Protocols.builtIn();
  private static final List<AdvisedSize> MEDIUM =
      List.of(new AdvisedSize("model-a", "youth-medium"));
  private static final List<String> A_SIZES = List.of("youth-small", "youth-medium", "youth-large");

  private static Here here(List<AdvisedSize> advised, FreeHelmet... helmets) {
    return new Here(
        Map.of("jaw-pad-20mm", 1, "jaw-pad-10mm", 1, "chin-strap-small", 1),
        List.of(helmets),
        Map.of("model-a", A_SIZES, "model-b", List.of("small", "medium")),
        advised,
        Optional.of(AT.minusSeconds(60)));
  }

  private static Here measuredInBetween(List<AdvisedSize> advised, FreeHelmet... helmets) {
    Here before = here(advised, helmets);
    return new Here(
        before.parts(), before.helmets(), before.sizes(), advised, Optional.of(AT.plusSeconds(60)));
  }

  private static Proposal next(ASession session, Here here) {
    return RemedyEngine.next(session.state(), PROTOCOL, here);
  }

  private static Proposal next(ASession session) {
    return next(session, here(MEDIUM));
  }

  private static ASession on(String model, String size) {
    KnownHelmet helmet = new KnownHelmet(TAG, model, size, "NORTH", Optional.empty());
    return ASession.openedWith(PROTOCOL).with(new TryHelmet(TAG, Optional.of(helmet), size, AT));
  }

  private static ASession on() {
    return on("model-a", "youth-medium");
  }

  private static Proposal attempt(String check, String remedy) {
    return new Proposal.Try(check, remedy, Optional.empty(), true);
  }

  private static Proposal attempt(String check, String remedy, String item) {
    return new Proposal.Try(check, remedy, Optional.of(item), true);
  }

  @Test
  @DisplayName("is the helmet that is kept for the player, else one of an advised size")
  void firstHelmet() {
    FreeHelmet advised = new FreeHelmet("LV1", "model-a", "youth-medium", false);
    FreeHelmet kept = new FreeHelmet("LV2", "model-a", "youth-large", true);
    ASession opened = ASession.openedWith(PROTOCOL);
    assertThat(next(opened, here(MEDIUM, advised, kept)))
        .isEqualTo(new Proposal.PutOn("model-a", "youth-large", List.of("LV2")));
    assertThat(next(opened, here(MEDIUM, advised)))
        .isEqualTo(new Proposal.PutOn("model-a", "youth-medium", List.of("LV1")));
  }

  @Test
  @DisplayName("is an end with the advised helmet where none is at the field")
  void noHelmet() {
    assertThat(next(ASession.openedWith(PROTOCOL)))
        .isEqualTo(new Proposal.EndWithoutFit(List.of(Need.helmet("model-a", "youth-medium"))));
  }

  @Test
  @DisplayName("is the tape for a head that was never measured")
  void neverMeasured() {
    assertThat(next(ASession.openedWith(PROTOCOL), Here.NOTHING))
        .isEqualTo(new Proposal.MeasureAgain(List.of()));
  }

  @Test
  @DisplayName("is the first check that has not passed, then the sign-off")
  void looks() {
    assertThat(next(on())).isEqualTo(new Proposal.Look("labels"));
    assertThat(next(on().with(ASession.passed("labels"))))
        .isEqualTo(new Proposal.Look("good-condition"));
    assertThat(next(on().withAllPassed())).isEqualTo(new Proposal.SignOff());
  }

  @Test
  @DisplayName("is a thicker pad for a loose cheek and a thinner one for a tight one")
  void cheeks() {
    assertThat(next(on().with(failed("jaw-pad-left", "loose"))))
        .isEqualTo(attempt("jaw-pad-left", "thicker-left-jaw-pad", "jaw-pad-20mm"));
    assertThat(next(on().with(failed("jaw-pad-right", "tight"))))
        .isEqualTo(attempt("jaw-pad-right", "thinner-right-jaw-pad", "jaw-pad-10mm"));
  }

  @Test
  @DisplayName("is air once for a jaw pad that takes air, and thickness after that")
  void inflatable() {
    ASession session = on("model-b", "medium").with(failed("jaw-pad-left", "loose"));
    assertThat(next(session)).isEqualTo(attempt("jaw-pad-left", "add-air-left-jaw-pad"));
    session
        .with(adjust("jaw-pad-left", "add-air-left-jaw-pad"))
        .with(failed("jaw-pad-left", "loose"));
    assertThat(next(session))
        .isEqualTo(attempt("jaw-pad-left", "thicker-left-jaw-pad", "jaw-pad-20mm"));
  }

  @Test
  @DisplayName("says when the records know no such part here, and names it when there is none")
  void missingPart() {
    ASession session = on().with(failed("jaw-pad-left", "loose"));
    Here bare = new Here(Map.of(), List.of(), Map.of(), MEDIUM, Optional.empty());
    assertThat(next(session, bare))
        .isEqualTo(
            new Proposal.Try(
                "jaw-pad-left", "thicker-left-jaw-pad", Optional.of("jaw-pad-20mm"), false));
    session.with(
        new PassOver("jaw-pad-left", "thicker-left-jaw-pad", Optional.empty(), "no-part", AT));
    assertThat(next(session, bare))
        .isEqualTo(new Proposal.EndWithoutFit(List.of(Need.part("jaw-pad-20mm"))));
  }

  @Test
  @DisplayName("is air where the pad slides on the forehead, then a smaller helmet")
  void forehead() {
    ASession session = on().with(failed("skin-moves", "slips"));
    assertThat(next(session)).isEqualTo(attempt("skin-moves", "add-air"));
    session.with(adjust("skin-moves", "add-air")).with(failed("skin-moves", "slips"));
    List<AdvisedSize> edge = List.of(MEDIUM.getFirst(), new AdvisedSize("model-a", "youth-small"));
    FreeHelmet small = new FreeHelmet("LV9", "model-a", "youth-small", false);
    assertThat(next(session, here(edge, small)))
        .isEqualTo(new Proposal.PutOn("model-a", "youth-small", List.of("LV9")));
    assertThat(next(session, here(edge)))
        .isEqualTo(new Proposal.EndWithoutFit(List.of(Need.helmet("model-a", "youth-small"))));
  }

  @Test
  @DisplayName(
      "is the tape before a size that was not advised, and the helmet once it was measured")
  void outsideTheAdvice() {
    ASession session = on().with(failed("skin-moves", "slips"));
    session.with(adjust("skin-moves", "add-air")).with(failed("skin-moves", "slips"));
    FreeHelmet small = new FreeHelmet("LV9", "model-a", "youth-small", false);
    assertThat(next(session, here(MEDIUM, small)))
        .isEqualTo(new Proposal.MeasureAgain(List.of(Need.helmet("model-a", "youth-small"))));
    assertThat(next(session, measuredInBetween(MEDIUM, small)))
        .isEqualTo(new Proposal.PutOn("model-a", "youth-small", List.of("LV9")));
  }

  @Test
  @DisplayName("is to centre and tighten for a loose strap cup, then the smaller cup")
  void cup() {
    ASession session = on().with(failed("strap-cup", "loose"));
    assertThat(next(session)).isEqualTo(attempt("strap-cup", "centre-cup"));
    session.with(adjust("strap-cup", "centre-cup")).with(failed("strap-cup", "loose"));
    assertThat(next(session)).isEqualTo(attempt("strap-cup", "tighten-strap"));
    session.with(adjust("strap-cup", "tighten-strap")).with(failed("strap-cup", "loose"));
    assertThat(next(session)).isEqualTo(attempt("strap-cup", "smaller-cup", "chin-strap-small"));
  }

  @Test
  @DisplayName("takes back too much air once, for the check that asked for it and for no other")
  void air() {
    ASession session = on().with(failed("snug", "loose")).with(adjust("snug", "add-air"));
    ASession over = session.with(failed("snug", "tight"));
    assertThat(next(over)).isEqualTo(attempt("snug", "let-air-out"));
    over.with(adjust("snug", "let-air-out")).with(failed("snug", "loose"));
    assertThat(next(over)).isInstanceOf(Proposal.MeasureAgain.class);

    ASession both = on().with(failed("snug", "loose")).with(adjust("snug", "add-air"));
    both.with(failed("ear-holes", "high"));
    assertThat(next(both))
        .isEqualTo(new Proposal.MeasureAgain(List.of(Need.helmet("model-a", "youth-large"))));
  }

  @Test
  @DisplayName("is no air for a model without an air liner")
  void noAirLiner() {
    Protocol plain =
        new Protocol(
            PROTOCOL.id(),
            PROTOCOL.version(),
            PROTOCOL.title(),
            PROTOCOL.hoursAnswersHold(),
            PROTOCOL.checks(),
            PROTOCOL.usual(),
            Map.of("model-a", PROTOCOL.usual()));
    ASession session = on().with(failed("snug", "loose"));
    assertThat(RemedyEngine.next(session.state(), plain, here(MEDIUM)))
        .isInstanceOf(Proposal.MeasureAgain.class);
  }

  @Test
  @DisplayName("comes to another model when one size is too large and the next too small")
  void betweenTwoSizes() {
    FreeHelmet small = new FreeHelmet("LV9", "model-a", "youth-small", false);
    FreeHelmet other = new FreeHelmet("LV8", "model-b", "medium", false);
    List<AdvisedSize> both =
        List.of(
            MEDIUM.getFirst(),
            new AdvisedSize("model-a", "youth-small"),
            new AdvisedSize("model-b", "medium"));
    ASession session = ASession.openedWith(PROTOCOL);
    session.with(
        new TryHelmet(
            TAG,
            Optional.of(new KnownHelmet(TAG, "model-a", "youth-medium", "NORTH", Optional.empty())),
            "youth-medium",
            AT));
    session.with(failed("front-back-still", "loose")).with(adjust("front-back-still", "add-air"));
    session.with(failed("front-back-still", "loose"));
    session.with(
        new TryHelmet(
            "LV9",
            Optional.of(
                new KnownHelmet("LV9", "model-a", "youth-small", "NORTH", Optional.empty())),
            "youth-small",
            AT));
    session.with(failed("takes-off", "tight")).with(adjust("takes-off", "let-air-out"));
    session.with(failed("takes-off", "tight"));
    assertThat(next(session, here(both, small, other)))
        .isEqualTo(new Proposal.PutOn("model-b", "medium", List.of("LV8")));
    assertThat(next(session, here(both, small)))
        .isEqualTo(new Proposal.EndWithoutFit(List.of(Need.helmet("model-b", "medium"))));
  }

  @Test
  @DisplayName("is another helmet of the size for one that is itself at fault, before all else")
  void atFault() {
    ASession session =
        on().with(failed("jaw-pad-left", "loose")).with(failed("good-condition", "damaged"));
    FreeHelmet same = new FreeHelmet("LV7", "model-a", "youth-medium", false);
    FreeHelmet itself = new FreeHelmet(TAG, "model-a", "youth-medium", true);
    session.with(ASession.passed("jaw-pad-left"));
    assertThat(next(session, here(List.of(), itself, same)))
        .isEqualTo(new Proposal.PutOn("model-a", "youth-medium", List.of("LV7")));
    assertThat(next(session, here(List.of(), itself)))
        .isEqualTo(new Proposal.EndWithoutFit(List.of(Need.helmet("model-a", "youth-medium"))));
  }

  @Test
  @DisplayName("is to go on with a session that was put aside, and nothing with one that is over")
  void notOpen() {
    assertThat(next(on().with(new Pause(AT)))).isEqualTo(new Proposal.Resume());
    assertThat(next(on().with(ASession.abandon("weather")))).isEqualTo(new Proposal.Nothing());
    assertThat(RemedyEngine.next(FitSession.NONE, PROTOCOL, here(MEDIUM)))
        .isEqualTo(new Proposal.Nothing());
  }

  @Test
  @DisplayName("knows the part of each place for itself")
  void placesForThemselves() {
    ASession session =
        on().with(failed("jaw-pad-left", "loose"))
            .with(adjust("jaw-pad-left", "thicker-left-jaw-pad"))
            .with(failed("jaw-pad-right", "tight"));
    assertThat(next(session))
        .isEqualTo(attempt("jaw-pad-right", "thinner-right-jaw-pad", "jaw-pad-10mm"));
    session.with(ASession.passed("jaw-pad-right")).with(failed("jaw-pad-left", "tight"));
    assertThat(next(session))
        .as("neither 15 nor 20 mm fits the cheek: no pad does")
        .isEqualTo(new Proposal.MeasureAgain(List.of(Need.helmet("model-a", "youth-large"))));
  }

  @Test
  @DisplayName("goes on along the row to its end")
  void alongTheRow() {
    Here all =
        new Here(
            Map.of("jaw-pad-20mm", 1, "jaw-pad-25mm", 1),
            List.of(),
            Map.of("model-a", A_SIZES),
            MEDIUM,
            Optional.empty());
    ASession session =
        on().with(failed("jaw-pad-left", "loose"))
            .with(adjust("jaw-pad-left", "thicker-left-jaw-pad"))
            .with(failed("jaw-pad-left", "loose"));
    assertThat(next(session, all))
        .isEqualTo(attempt("jaw-pad-left", "thicker-left-jaw-pad", "jaw-pad-25mm"));
    session
        .with(adjust("jaw-pad-left", "thicker-left-jaw-pad"))
        .with(failed("jaw-pad-left", "loose"));
    assertThat(next(session, all)).isInstanceOf(Proposal.MeasureAgain.class);
  }

  @Test
  @DisplayName("is air three times at most, whichever checks ask for it")
  void enoughAir() {
    ASession session = on();
    for (String check : List.of("snug", "front-back-still", "eyes-clear")) {
      String finding = PROTOCOL.check(check).orElseThrow().ways().getFirst().finding();
      session.with(failed(check, finding));
      assertThat(next(session)).isEqualTo(attempt(check, "add-air"));
      session.with(adjust(check, "add-air")).with(ASession.passed(check));
    }
    session.with(failed("neck-free", "low"));
    assertThat(next(session))
        .isEqualTo(new Proposal.MeasureAgain(List.of(Need.helmet("model-a", "youth-small"))));
  }

  @Test
  @DisplayName("of the strap does not depend on the air")
  void strapAndAir() {
    ASession session = on().with(failed("snug", "loose")).with(adjust("snug", "add-air"));
    session.with(failed("strap-tight", "tight"));
    assertThat(next(session)).isEqualTo(attempt("strap-tight", "loosen-strap"));
    session.with(adjust("strap-tight", "loosen-strap")).with(failed("strap-tight", "loose"));
    assertThat(next(session)).isEqualTo(attempt("strap-tight", "tighten-strap"));
  }

  @Test
  @DisplayName("names as needed only a part that was not there")
  void partsThatWereNotThere() {
    ASession session = on().with(failed("jaw-pad-left", "loose"));
    session.with(
        new PassOver("jaw-pad-left", "thicker-left-jaw-pad", Optional.empty(), "not-possible", AT));
    assertThat(next(session))
        .isEqualTo(new Proposal.MeasureAgain(List.of(Need.helmet("model-a", "youth-small"))));

    ASession cup = on().with(failed("strap-cup", "loose"));
    cup.with(new PassOver("strap-cup", "centre-cup", Optional.empty(), "not-possible", AT));
    cup.with(new PassOver("strap-cup", "smaller-cup", Optional.empty(), "no-part", AT));
    assertThat(next(cup)).isEqualTo(attempt("strap-cup", "tighten-strap"));
    cup.with(adjust("strap-cup", "tighten-strap")).with(failed("strap-cup", "loose"));
    assertThat(next(cup))
        .isEqualTo(new Proposal.EndWithoutFit(List.of(Need.part("chin-strap-small"))));
    cup.with(ASession.passed("strap-cup")).with(failed("jaw-pad-left", "loose"));
    assertThat(next(cup))
        .isEqualTo(attempt("jaw-pad-left", "thicker-left-jaw-pad", "jaw-pad-20mm"));
  }

  @Test
  @DisplayName("counts a part that went into a helmet of this session as gone from the shelf")
  void goneFromTheShelf() {
    ASession session =
        on().with(failed("jaw-pad-left", "loose"))
            .with(adjust("jaw-pad-left", "thicker-left-jaw-pad"))
            .with(failed("jaw-pad-right", "loose"));
    assertThat(next(session))
        .isEqualTo(
            new Proposal.Try(
                "jaw-pad-right", "thicker-right-jaw-pad", Optional.of("jaw-pad-20mm"), false));
  }
}
