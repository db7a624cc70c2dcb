package org.tapeline.inventory.helmet;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What happens to a helmet in its life. */
public sealed interface HelmetEvent {
  String tag();

  Instant at();

  /** It came into stock. */
  record HelmetReceived(
      String tag,
      String model,
      String size,
      String lot,
      LocalDate manufacturedOn,
      Optional<LocalDate> certifiedUntil,
      String place,
      Instant at)
      implements HelmetEvent {}

  /** A player has it. */
  record HelmetIssued(String tag, UUID player, String place, UUID session, Instant at)
      implements HelmetEvent {}

  /** A sign-off named it though it cannot be issued. */
  record IssueRefused(String tag, UUID player, UUID session, String why, Instant at)
      implements HelmetEvent {}

  /** The player no longer has it. */
  record HelmetReturned(String tag, UUID player, String place, Instant at) implements HelmetEvent {}

  /** It is elsewhere now. */
  record HelmetMoved(String tag, String from, String to, Instant at) implements HelmetEvent {}

  /** Damage was seen; {@code where} and {@code what} are codes of the rule table. */
  record DamageReported(
      UUID report,
      String tag,
      String where,
      String what,
      String severity,
      Optional<UUID> player,
      String place,
      String by,
      Instant at)
      implements HelmetEvent {}

  /** Out of use until it has been inspected. */
  record HelmetQuarantined(String tag, String why, Optional<UUID> player, String place, Instant at)
      implements HelmetEvent {}

  /** It was looked at. */
  record HelmetInspected(String tag, String outcome, List<String> findings, String by, Instant at)
      implements HelmetEvent {}

  /** Never to be worn again. */
  record HelmetRetired(String tag, String why, Instant at) implements HelmetEvent {}
}
