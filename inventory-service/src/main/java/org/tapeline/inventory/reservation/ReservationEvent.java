package org.tapeline.inventory.reservation;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What is kept for a re-fit case, or not. */
public sealed interface ReservationEvent {
  UUID refitCase();

  UUID player();

  /** It is kept for the case, and can be fitted at {@code toPlace} from {@code readyAt} on. */
  record ReplacementReserved(
      UUID refitCase,
      UUID player,
      Need need,
      Optional<String> tag,
      Optional<String> item,
      String fromPlace,
      String toPlace,
      Instant readyAt,
      Instant expiresAt)
      implements ReservationEvent {}

  /** Nothing in stock fits; it was requested. */
  record ReplacementMissing(
      UUID refitCase,
      UUID player,
      List<Need> needs,
      String toPlace,
      List<UUID> requests,
      Instant expectedAt)
      implements ReservationEvent {}

  /** It is no longer kept. */
  record ReservationReleased(
      UUID refitCase, UUID player, Optional<String> tag, Optional<String> item, String why)
      implements ReservationEvent {}
}
