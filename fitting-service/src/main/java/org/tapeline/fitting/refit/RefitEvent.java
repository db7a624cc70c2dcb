package org.tapeline.fitting.refit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.session.Need;

/** What happens to a re-fit case. */
public sealed interface RefitEvent {
  UUID refitCase();

  /** A player needs a new fit. */
  record RefitOpened(
      UUID refitCase,
      UUID player,
      String field,
      String team,
      String urgency,
      String why,
      Optional<String> tag,
      List<Need> needs,
      Instant at)
      implements RefitEvent {}

  /**
   * It has a place and a time; a later one replaces it.
   *
   * @param chosenWith the notice by whose link a guardian chose it; empty when it was booked for
   *     them
   */
  record RefitBooked(
      UUID refitCase,
      UUID player,
      String field,
      UUID fitDay,
      Instant startsAt,
      Instant endsAt,
      String zone,
      boolean waitsForArrival,
      Optional<UUID> chosenWith,
      Instant at)
      implements RefitEvent {}

  /**
   * It has lost its place and time and waits again.
   *
   * @param fitDay the one that does not take place, or no longer with room for it
   * @param why {@code moved} or {@code cancelled}, of the fit day
   */
  record RefitUnbooked(UUID refitCase, UUID player, UUID fitDay, String why, Instant at)
      implements RefitEvent {}

  /** It is over: fitted or cancelled. */
  record RefitClosed(UUID refitCase, UUID player, String outcome, Instant at)
      implements RefitEvent {}
}
