package org.tapeline.fitting.today;

import java.time.Instant;
import java.util.UUID;

/** What is told of re-checks. */
public sealed interface RecheckEvent {

  /**
   * A re-check is due: said once for one cause and sign-off.
   *
   * @param rule code of the plan's trigger
   * @param at when it became due
   * @param lapsesAt from then on the sign-off does not hold without the check; {@code null} when it
   *     goes on
   */
  record RecheckDue(UUID player, String tag, String rule, Instant at, Instant lapsesAt)
      implements RecheckEvent {}
}
