package org.tapeline.fitting.session;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.session.FitSession.Applied;
import org.tapeline.fitting.session.FitSessionCommand.PassOver;
import org.tapeline.fitting.session.FitSessionEvent.RemedyPassedOver;

/** Whether a remedy can be passed over: only one that could be tried now. */
final class PassOverRules {
  static final String NO_PART = "no-part";
  private static final Set<String> REASONS = Set.of(NO_PART, "not-possible");

  private PassOverRules() {}

  static Decision passOver(FitSession state, PassOver c, Protocol protocol) {
    if (!REASONS.contains(c.why())) {
      return Decision.refused("why", "why", Decision.oneOf(REASONS));
    }
    Optional<Check> check = protocol.check(c.check());
    if (check.isEmpty() || !state.failed(c.check())) {
      return Decision.refused("not-failed", "check", "A remedy goes with a check that failed.");
    }
    Optional<Applied> left =
        RemediesLeft.of(state, check.get(), protocol).stream()
            .filter(a -> a.remedy().equals(c.remedy()))
            .findFirst();
    if (left.isEmpty()) {
      return Decision.refused(
          "not-left", "remedy", "That is not to be tried any more. Go on with the next remedy.");
    }
    if (c.why().equals(NO_PART) && left.get().item().isEmpty()) {
      return Decision.refused("item", "why", "This remedy uses no part.");
    }
    return Decision.accepted(
        new RemedyPassedOver(
            state.session(),
            state.player(),
            c.check(),
            c.remedy(),
            c.item().filter(i -> itemsOf(check.get(), c).contains(i)).or(left.get()::item),
            c.why(),
            c.at()));
  }

  private static List<String> itemsOf(Check check, PassOver c) {
    return check.remedy(c.remedy()).orElseThrow().items();
  }
}
