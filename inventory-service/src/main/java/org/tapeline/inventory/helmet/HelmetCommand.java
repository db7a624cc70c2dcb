package org.tapeline.inventory.helmet;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What may be asked of a helmet's record. */
public sealed interface HelmetCommand {
  Instant at();

  /** It is on its way from the supplier. */
  record Order(String model, String size, String place, Optional<LocalDate> expectedOn, Instant at)
      implements HelmetCommand {}

  /** Take it into stock. */
  record Receive(
      String model,
      String size,
      String lot,
      LocalDate manufacturedOn,
      Optional<LocalDate> certifiedUntil,
      String place,
      Instant at)
      implements HelmetCommand {}

  /** Give it to a player, after a sign-off in it. */
  record Issue(UUID player, String place, UUID session, LocalDate today, Instant at)
      implements HelmetCommand {}

  /** Take it back from its player. */
  record Return(String place, Instant at) implements HelmetCommand {}

  /** Bring it to another place. */
  record Move(String to, Instant at) implements HelmetCommand {}

  /** Note damage; {@code rulesVersion} says which rule table judged it, where one did. */
  record ReportDamage(
      UUID report,
      String where,
      String what,
      boolean structural,
      Optional<Integer> rulesVersion,
      String by,
      Instant at)
      implements HelmetCommand {

    /** Without a rule table. */
    public ReportDamage(
        UUID report, String where, String what, boolean structural, String by, Instant at) {
      this(report, where, what, structural, Optional.empty(), by, at);
    }
  }

  /** Take it out of use until somebody has looked at it; nothing has been seen on it yet. */
  record SetAside(Instant at) implements HelmetCommand {}

  /** Say what an inspection found, which parts were put on, and by which findings it was judged. */
  record Inspect(
      boolean backToStock,
      List<String> findings,
      List<String> parts,
      Optional<Integer> rulesVersion,
      String by,
      Instant at)
      implements HelmetCommand {

    /** Without parts. */
    public Inspect(boolean backToStock, List<String> findings, String by, Instant at) {
      this(backToStock, findings, List.of(), Optional.empty(), by, at);
    }
  }

  /** Nobody may wear it until the hold is lifted. */
  record Hold(UUID hold, Instant at) implements HelmetCommand {}

  /** The hold no longer concerns it. */
  record Free(UUID hold, Instant at) implements HelmetCommand {}

  /** Send it to be reconditioned, with others. */
  record SendOut(UUID batch, Instant at) implements HelmetCommand {}

  /**
   * Take it back from the reconditioner.
   *
   * @param certifiedUntil the new last day; empty when it comes back as it went
   */
  record ComeBack(Optional<LocalDate> certifiedUntil, String place, String by, Instant at)
      implements HelmetCommand {}

  /**
   * Note until when it is certified.
   *
   * @param how {@code label-read}, or {@code policy} when no label was read
   */
  record Recertify(LocalDate certifiedUntil, String how, String by, Instant at)
      implements HelmetCommand {}

  /** Take it out of use for good. */
  record Retire(String why, Instant at) implements HelmetCommand {}
}
