package org.tapeline.fitting.session;

import java.util.Optional;
import java.util.Set;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.session.FitSession.Status;
import org.tapeline.fitting.session.FitSessionCommand.Correct;
import org.tapeline.fitting.session.FitSessionCommand.TakeBackPass;
import org.tapeline.fitting.session.FitSessionEvent.EntryCorrected;
import org.tapeline.fitting.session.FitSessionEvent.PassTakenBack;

/**
 * Whether an entry can be taken back. The entry stays in the record with the reason beside it; what
 * no longer counts is answered anew.
 */
final class CorrectionRules {
  private static final Set<String> REASONS = Set.of("wrong-button", "wrong-helmet", "wrong-player");

  private CorrectionRules() {}

  static Decision correct(FitSession state, Correct c, Protocol protocol) {
    if (!REASONS.contains(c.why())) {
      return Decision.refused("why", "why", Decision.oneOf(REASONS));
    }
    if (protocol.check(c.check()).isEmpty()) {
      return Decision.refused("check-unknown", "check", "The protocol has no such check.");
    }
    boolean there = c.remedy().map(r -> applied(state, c.check(), r)).orElse(answered(state, c));
    return there
        ? Decision.accepted(
            new EntryCorrected(
                state.session(), state.player(), c.check(), c.remedy(), c.why(), c.at()))
        : Decision.refused(
            "nothing-to-correct", "check", "Nothing that counts was entered there. Look again.");
  }

  private static boolean answered(FitSession state, Correct c) {
    return state.answers().containsKey(c.check());
  }

  private static boolean applied(FitSession state, String check, String remedy) {
    return state.now().stream()
        .flatMap(work -> work.applied().stream())
        .anyMatch(a -> a.check().equals(check) && a.remedy().equals(remedy));
  }

  static Decision takeBack(FitSession state, TakeBackPass c) {
    if (state.status() != Status.PASSED) {
      return Decision.refused("not-passed", "Only a pass can be taken back.");
    }
    if (!REASONS.contains(c.why())) {
      return Decision.refused("why", "why", Decision.oneOf(REASONS));
    }
    Optional<FitSession.Helmet> helmet = state.helmet();
    return Decision.accepted(
        new PassTakenBack(
            state.session(), state.player(), helmet.orElseThrow().tag(), c.why(), c.at()));
  }
}
