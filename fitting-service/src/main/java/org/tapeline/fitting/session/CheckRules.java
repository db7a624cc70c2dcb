package org.tapeline.fitting.session;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Remedy;
import org.tapeline.fitting.session.FitSessionCommand.Adjust;
import org.tapeline.fitting.session.FitSessionCommand.RecordCheck;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;
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
        answer.passed() ? Optional.empty() : answer.finding(),
        answer.valueMm(),
        answer.at());
  }

  static Decision adjust(FitSession state, Adjust adjust, Protocol protocol) {
    Optional<Remedy> remedy =
        protocol.check(adjust.check()).flatMap(c -> c.remedy(adjust.remedy()));
    if (remedy.isEmpty()) {
      return Decision.refused("remedy-unknown", "remedy", "The check has no such remedy.");
    }
    if (!state.failed(adjust.check())) {
      return Decision.refused("not-failed", "check", "A remedy goes with a check that failed.");
    }
    if (state.tried(adjust.check(), adjust.remedy())) {
      return Decision.refused(
          "tried-before", "remedy", "That was tried on this helmet before. Try the next remedy.");
    }
    List<String> items = remedy.get().items();
    if (adjust.item().filter(item -> !items.contains(item)).isPresent()) {
      return Decision.refused(
          "item",
          "item",
          items.isEmpty() ? "This remedy uses no part." : Decision.oneOf(Set.copyOf(items)));
    }
    Set<String> voids = new TreeSet<>(remedy.get().voids());
    voids.add(adjust.check());
    return Decision.accepted(
        new AdjustmentMade(
            state.session(),
            state.player(),
            adjust.check(),
            adjust.remedy(),
            adjust.item().or(() -> items.stream().findFirst()),
            List.copyOf(voids),
            adjust.at()));
  }
}
