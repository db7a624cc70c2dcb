package org.tapeline.fitting.session;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Remedy;
import org.tapeline.fitting.session.FitSession.Applied;
import org.tapeline.fitting.session.FitSessionCommand.Adjust;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;

/** Whether a remedy can be recorded, and what it voids. */
final class AdjustRules {
  private AdjustRules() {}

  static Decision adjust(FitSession state, Adjust adjust, Protocol protocol) {
    Optional<Check> check = protocol.check(adjust.check());
    Optional<Remedy> remedy = check.flatMap(c -> c.remedy(adjust.remedy()));
    if (remedy.isEmpty()) {
      return Decision.refused("remedy-unknown", "remedy", "The check has no such remedy.");
    }
    if (!state.failed(adjust.check())) {
      return Decision.refused("not-failed", "check", "A remedy goes with a check that failed.");
    }
    Optional<Applied> left =
        RemediesLeft.of(state, check.get(), protocol).stream()
            .filter(a -> a.remedy().equals(adjust.remedy()))
            .findFirst();
    if (left.isEmpty()) {
      return Decision.refused(
          "tried-before",
          "remedy",
          "That was tried on this helmet before, or would undo what another check asked for. Try"
              + " the next remedy.");
    }
    List<String> items = remedy.get().items();
    if (adjust.item().filter(item -> !items.contains(item)).isPresent()) {
      return Decision.refused(
          "item",
          "item",
          items.isEmpty() ? "This remedy uses no part." : Decision.oneOf(Set.copyOf(items)));
    }
    return Decision.accepted(made(state, adjust, remedy.get(), left.get().item()));
  }

  private static AdjustmentMade made(
      FitSession state, Adjust adjust, Remedy remedy, Optional<String> usual) {
    Set<String> voids = new TreeSet<>(remedy.voids());
    voids.add(adjust.check());
    return new AdjustmentMade(
        state.session(),
        state.player(),
        adjust.check(),
        adjust.remedy(),
        adjust.item().or(() -> usual),
        List.copyOf(voids),
        adjust.at());
  }
}
