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

  /** It is on its way from the supplier. */
  record HelmetOrdered(
      String tag,
      String model,
      String size,
      String place,
      Optional<LocalDate> expectedOn,
      Instant at)
      implements HelmetEvent {}

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
      Optional<Integer> rulesVersion,
      String by,
      Instant at)
      implements HelmetEvent {}

  /** Out of use until it has been inspected. */
  record HelmetQuarantined(String tag, String why, Optional<UUID> player, String place, Instant at)
      implements HelmetEvent {}

  /**
   * It was looked at.
   *
   * @param state where it stands when it goes back to stock: available, or held
   * @param parts what was put on
   * @param rulesVersion the findings by which it was decided; empty in old ones
   */
  record HelmetInspected(
      String tag,
      String outcome,
      List<String> findings,
      Optional<String> state,
      List<String> parts,
      Optional<Integer> rulesVersion,
      String by,
      Instant at)
      implements HelmetEvent {
    public HelmetInspected {
      parts = parts == null ? List.of() : parts;
    }
  }

  /**
   * A hold is on it.
   *
   * @param player who had it
   * @param state where it stands: held, or quarantined or at the reconditioner still
   */
  record HelmetHeld(
      String tag, UUID hold, Optional<UUID> player, String place, String state, Instant at)
      implements HelmetEvent {}

  /**
   * A hold is no longer on it.
   *
   * @param state where it stands: available, or held by another hold, or as before
   */
  record HelmetFreed(String tag, UUID hold, String place, String state, Instant at)
      implements HelmetEvent {}

  /** It went to the reconditioner with others. */
  record HelmetSentOut(String tag, UUID batch, String place, Instant at) implements HelmetEvent {}

  /**
   * It came back from the reconditioner.
   *
   * @param state where it stands: available, or held
   */
  record HelmetCameBack(String tag, String place, String state, Instant at)
      implements HelmetEvent {}

  /**
   * It is certified until another day than was known.
   *
   * @param how {@code reconditioned}, {@code label-read} on a helmet that was not sent out, or
   *     {@code policy} when no label was read
   */
  record HelmetRecertified(String tag, LocalDate certifiedUntil, String how, String by, Instant at)
      implements HelmetEvent {}

  /** Never to be worn again. */
  record HelmetRetired(String tag, String why, Instant at) implements HelmetEvent {}
}
