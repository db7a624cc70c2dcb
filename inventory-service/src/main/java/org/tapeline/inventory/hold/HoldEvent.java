package org.tapeline.inventory.hold;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What happens to a hold. That a helmet is held, or free again, stands with the helmet. */
public sealed interface HoldEvent {
  UUID hold();

  Instant at();

  /**
   * Nobody may wear, be given or have kept for them what it concerns, from now on.
   *
   * @param reason recall, standards-notice or own-finding
   * @param reference the number on the notice
   * @param matching how many helmets it concerns now
   * @param worn how many of these players have
   */
  record HoldPlaced(
      UUID hold,
      String reason,
      String reference,
      Optional<String> model,
      List<String> lots,
      Optional<LocalDate> madeFrom,
      Optional<LocalDate> madeTo,
      List<String> tags,
      int matching,
      int worn,
      String by,
      Instant at)
      implements HoldEvent {}

  /**
   * It ends for all its helmets, or for some.
   *
   * @param scope whole, lots, place or tags; what follows it is only there for its scope
   * @param helmets how many it ends for
   */
  record HoldLifted(
      UUID hold,
      String scope,
      List<String> lots,
      Optional<String> place,
      List<String> tags,
      int helmets,
      String by,
      Instant at)
      implements HoldEvent {}

  /** Somebody has laid the helmet aside, so that nobody takes it by mistake. */
  record HelmetPutAside(UUID hold, String tag, String place, String by, Instant at)
      implements HoldEvent {}
}
