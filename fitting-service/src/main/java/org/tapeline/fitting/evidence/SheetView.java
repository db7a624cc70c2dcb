package org.tapeline.fitting.evidence;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.roster.Words;

/**
 * What stands on the sheet, in words.
 *
 * @param standing whether the sign-off holds, at the moment of printing
 * @param holds for the weight of the frame around it
 * @param note something to know about the wording; empty for nothing
 */
record SheetView(
    String player,
    String number,
    String team,
    String field,
    String tag,
    String model,
    String size,
    String parts,
    String liner,
    String fitter,
    String signedOff,
    String protocol,
    String air,
    String altitude,
    String hair,
    String standing,
    boolean holds,
    String printed,
    String zone,
    List<Row> checks,
    List<Tried> tried,
    String note,
    String session,
    String fingerprint) {

  /** A check on the sheet. */
  record Row(int number, String check, String answer, String measured, String time) {}

  /** Something that was tried. */
  record Tried(String time, String what) {}

  static SheetView of(
      Evidence e,
      Optional<PlayerCopy> player,
      Standing standing,
      SheetWords words,
      Instant printedAt) {
    Moments moments = Moments.at(e.field());
    return new SheetView(
        player.map(PlayerCopy::name).orElse("erased"),
        player.map(p -> p.number).orElse("erased"),
        e.team(),
        e.field(),
        e.tag(),
        Words.model(e.model()),
        Words.size(e.size()),
        SheetWords.parts(e),
        words.liner(e),
        e.fitter(),
        moments.whole(e.at()),
        e.protocol() + ", version " + e.protocolVersion(),
        SheetWords.air(e.conditions()),
        SheetWords.altitude(e.conditions()),
        SheetWords.hair(e.conditions()),
        said(standing, moments),
        standing instanceof Standing.Holds,
        moments.whole(printedAt),
        moments.zoneSaid(),
        checks(e, words, moments),
        tried(e, words, moments),
        words.otherWording(e).orElse(""),
        e.session().toString(),
        Fingerprint.of(e).said());
  }

  private static List<Row> checks(Evidence e, SheetWords words, Moments moments) {
    List<Evidence.Answer> answers = e.answers();
    return IntStream.range(0, answers.size())
        .mapToObj(
            i -> {
              Evidence.Answer a = answers.get(i);
              return new Row(
                  i + 1,
                  words.check(a.check()),
                  SheetWords.answer(a),
                  SheetWords.measured(a),
                  moments.hour(a.at(), e.at()));
            })
        .toList();
  }

  private static List<Tried> tried(Evidence e, SheetWords words, Moments moments) {
    return e.steps().stream()
        .map(s -> new Tried(moments.hour(s.at(), e.at()), words.step(s)))
        .toList();
  }

  static String said(Standing standing, Moments moments) {
    return switch (standing) {
      case Standing.Holds s ->
          s.checkDue() ? "It holds; a re-check of the fit is due." : "It holds.";
      case Standing.Ended s -> "It ended on " + moments.whole(s.at()) + ": " + s.why() + ".";
      case Standing.DoesNotHold s -> "It does not hold: " + s.reason() + ".";
      case Standing.NotKnown s -> s.reason() + ".";
    };
  }
}
