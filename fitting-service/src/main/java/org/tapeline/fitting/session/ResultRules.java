package org.tapeline.fitting.session;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.session.FitSession.Helmet;
import org.tapeline.fitting.session.FitSessionCommand.Fail;
import org.tapeline.fitting.session.FitSessionCommand.Pass;
import org.tapeline.fitting.session.FitSessionEvent.CheckPassed;
import org.tapeline.fitting.session.FitSessionEvent.FitFailed;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;

/** Whether a session can end with a fit or without one. */
final class ResultRules {
  private ResultRules() {}

  static Decision pass(FitSession state, Pass pass, Protocol protocol) {
    if (state.helmet().isEmpty()) {
      return HelmetRules.none();
    }
    Helmet helmet = state.helmet().get();
    Optional<Decision> unfit = HelmetRules.unfit(state, helmet.tag(), pass.helmet());
    if (unfit.isPresent()) {
      return unfit.get();
    }
    List<String> open =
        protocol.checks().stream().filter(c -> !state.passed(c.id())).map(Check::question).toList();
    if (!open.isEmpty()) {
      return Decision.refused(
          "checks-open", "Still to be passed: " + String.join("; ", open) + ".");
    }
    if (!Parts.allCodes(pass.parts())) {
      return Decision.refused("parts", "parts", "List the codes of parts, such as jaw-pad-15mm.");
    }
    return tooOld(state, pass, protocol)
        .orElseGet(() -> Decision.accepted(passed(state, helmet, pass, protocol)));
  }

  /** A fit check is one sitting, and the last word on a player is the newest. */
  private static Optional<Decision> tooOld(FitSession state, Pass pass, Protocol protocol) {
    Instant oldest =
        protocol.checks().stream()
            .map(c -> state.answers().get(c.id()).at())
            .min(Instant::compareTo)
            .orElseThrow();
    if (oldest.isBefore(pass.at().minus(Duration.ofHours(protocol.hoursAnswersHold())))) {
      return Optional.of(
          Decision.refused(
              "answers-old",
              "Some answers are older than "
                  + protocol.hoursAnswersHold()
                  + " hours. End this session and open a new one."));
    }
    return pass.endedElsewhere()
        .filter(at -> !at.isBefore(oldest))
        .map(
            at ->
                Decision.refused(
                    "ended-elsewhere",
                    "Another session of this player ended meanwhile. End this one"
                        + " and open a new one."));
  }

  private static FitPassed passed(FitSession state, Helmet helmet, Pass pass, Protocol protocol) {
    return new FitPassed(
        state.session(),
        state.player(),
        state.field(),
        state.team(),
        helmet.tag(),
        helmet.model(),
        helmet.size(),
        state.fitter(),
        protocol.id(),
        protocol.version(),
        Parts.fitted(state.parts(), pass.parts()),
        pass.conditions(),
        protocol.checks().stream()
            .map(c -> new CheckPassed(c.id(), "pass", state.answers().get(c.id()).at()))
            .toList(),
        pass.at());
  }

  static Decision fail(FitSession state, Fail fail, Protocol protocol) {
    List<Check> failed = protocol.checks().stream().filter(c -> state.failed(c.id())).toList();
    List<Need> needs =
        fail.needs().isEmpty() ? Needs.of(state, protocol, fail.here()) : fail.needs();
    if (needs.isEmpty()) {
      return Decision.refused(
          "needs-unknown",
          "needs",
          "Say what the re-fit needs (a helmet of which size, which part), or record the check"
              + " that failed.");
    }
    return Decision.accepted(
        new FitFailed(
            state.session(),
            state.player(),
            state.field(),
            state.team(),
            state.helmet().map(Helmet::tag),
            state.helmet().map(Helmet::model),
            state.helmet().map(Helmet::size),
            state.fitter(),
            failed.stream().map(Check::id).toList(),
            List.copyOf(needs),
            fail.at()));
  }
}
