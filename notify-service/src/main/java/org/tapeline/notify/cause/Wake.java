package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.Collection;
import java.util.UUID;
import org.tapeline.notify.notice.TellAgain;

/** Lets cases and fits be looked at again, by {@link LateBookings}. */
@ApplicationScoped
class Wake implements TellAgain {
  private final Clock clock;

  Wake(Clock clock) {
    this.clock = clock;
  }

  @Override
  public void soon(Collection<UUID> refitCases, Collection<UUID> players) {
    if (!refitCases.isEmpty()) {
      RefitCaseRow.update(
          "waitUntil = ?1 where refitCase in ?2 and outcome is null", clock.instant(), refitCases);
    }
    players.forEach(player -> FitRow.lookSoon(player, clock.instant()));
  }
}
