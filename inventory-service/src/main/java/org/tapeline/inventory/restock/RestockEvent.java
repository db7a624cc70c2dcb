package org.tapeline.inventory.restock;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What happens to a request to bring something to a place. */
public sealed interface RestockEvent {
  UUID request();

  String place();

  /**
   * It is wanted, or more of it than before.
   *
   * @param forStock pieces that are for no case
   * @param causes cases that wait for it, at most 50 of them
   */
  record RestockRequested(
      UUID request,
      String kind,
      String place,
      Optional<String> fromPlace,
      String item,
      Optional<String> model,
      Optional<String> size,
      Optional<String> tag,
      int quantity,
      int forStock,
      List<UUID> causes,
      Instant expectedAt,
      Instant at)
      implements RestockEvent {}

  /** Off the shelf. */
  record RestockPicked(UUID request, String place, int quantity, String by, Instant at)
      implements RestockEvent {}

  /** On its way. */
  record RestockShipped(
      UUID request, String place, int quantity, String by, Instant at, Instant expectedAt)
      implements RestockEvent {}

  /** It came; {@code over} pieces more than were asked for. */
  record RestockReceived(
      UUID request,
      String place,
      int quantity,
      @JsonProperty("short") int missing,
      int damaged,
      int over,
      List<String> tags,
      String by,
      Instant at)
      implements RestockEvent {}

  /** It will not come. */
  record RestockCancelled(UUID request, String place, String why, String by, Instant at)
      implements RestockEvent {}
}
