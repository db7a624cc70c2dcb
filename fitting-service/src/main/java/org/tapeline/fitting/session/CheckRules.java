package org.tapeline.fitting.session;

import java.util.Optional;
import java.util.Set;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.session.FitSessionCommand.RecordCheck;
import org.tapeline.fitting.session.FitSessionEvent.CheckRecorded;

/** Whether an answer or a remedy can be recorded. */
final class CheckRules {
  private static final Set<String> FINDINGS =
      Set.of("loose", "tight", "high", "low", "damaged", "slips", "other");
  private static final Set<String> AXES =
      Set.of(
          "front-back", "sides", "crown-height", "jaw-left", "jaw-right", "chin-strap", "hardware");
  private static final double MOST_MM = 500;

  private CheckRules() {}

  static Decision recordCheck(FitSession state, RecordCheck answer, Protocol protocol) {
    Optional<Check> check = protocol.check(answer.check());
    if (check.isEmpty()) {
      return Decision.refused("check-unknown", "check", "The protocol has no such check.");
    }
    if (state.helmet().isEmpty()) {
      return HelmetRules.none();
    }
    if (answer.finding().filter(f -> !FINDINGS.contains(f)).isPresent()) {
      return Decision.refused("finding", "finding", Decision.oneOf(FINDINGS));
    }
    if (answer.axis().filter(a -> !AXES.contains(a)).isPresent()) {
      return Decision.refused("axis", "axis", Decision.oneOf(AXES));
    }
    if (answer.valueMm().filter(mm -> !(mm >= 0 && mm <= MOST_MM)).isPresent()) {
      return Decision.refused("value", "valueMm", "A length from 0 to 500 mm.");
    }
    Optional<String> measured =
        answer.valueMm().flatMap(mm -> check.get().measure().flatMap(m -> m.finding(mm)));
    if (answer.passed() && measured.isPresent()) {
      return Decision.refused(
          "out-of-limits",
          "valueMm",
          "That is no pass: " + check.get().measure().get().said() + " passes. Measure again.");
    }
    if (answer.passed() && state.failed(answer.check()) && check.get().standsUntilMended()) {
      return Decision.refused(
          "not-mended",
          "result",
          "This was found wrong with the helmet itself. Apply a remedy first, or put the helmet"
              + " aside and take another one.");
    }
    return Decision.accepted(recorded(state, answer, check.get()));
  }

  private static CheckRecorded recorded(FitSession state, RecordCheck answer, Check check) {
    return new CheckRecorded(
        state.session(),
        state.player(),
        answer.check(),
        answer.passed() ? "pass" : "fail",
        answer.passed() ? Optional.empty() : answer.axis().or(() -> Optional.of(check.axis())),
        answer.passed() ? Optional.empty() : finding(answer, check),
        answer.valueMm(),
        answer.at());
  }

  /** A length says by itself what is wrong. */
  private static Optional<String> finding(RecordCheck answer, Check check) {
    return answer
        .valueMm()
        .flatMap(mm -> check.measure().flatMap(m -> m.finding(mm)))
        .or(answer::finding);
  }
}
