package org.tapeline.fitting.helmet;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Formula;

/** A helmet as inventory tells: made by its receipt, so that model, size and place are known. */
@Entity
@Table(name = "helmet")
public class HelmetCopy extends PanacheEntityBase {
  @Id public String tag;
  public String model;
  public String size;
  public String place;

  /** By its own events; see {@link #stands}. */
  public String state;

  public UUID holder;

  /** As printed, {@code not-stated} where nobody could read it; null in old rows. */
  public String lot;

  /** Null in old rows. */
  @Column(name = "made_on")
  public LocalDate madeOn;

  /** A hold was placed that concerns it, and its own event of that is still to come. */
  @Formula("hold_ahead(tag, model, lot, made_on, place)")
  public boolean holdAhead;

  @Column(name = "certified_until")
  public LocalDate certifiedUntil;

  /** When it was last handed back. */
  @Column(name = "returned_at")
  public Instant returnedAt;

  /** When damage on its surface was last reported. */
  @Column(name = "cosmetic_damage_at")
  public Instant cosmeticDamageAt;

  /** Its state; held, too, from the moment at which a hold on it was placed. */
  public String stands() {
    return holdAhead && (state.equals("available") || state.equals("issued")) ? "held" : state;
  }

  /**
   * Why this player may not have the helmet, in words that say what to do; empty when nothing
   * stands against it.
   *
   * @param today the day at the field
   */
  public Optional<String> refusalFor(UUID player, LocalDate today) {
    return standing(stands().equals("available") ? HelmetReservation.playersOf(tag) : List.of())
        .refusalFor(player, today);
  }

  /**
   * The same, for many helmets at once.
   *
   * @param keptFor for whom this one is kept
   */
  public Optional<String> refusalFor(UUID player, LocalDate today, List<UUID> keptFor) {
    return standing(keptFor).refusalFor(player, today);
  }

  private HelmetStanding standing(List<UUID> keptFor) {
    return new HelmetStanding(
        stands(), Optional.ofNullable(holder), keptFor, Optional.ofNullable(certifiedUntil));
  }

  /** Helmets of a field that are in service. */
  public static List<HelmetCopy> at(String field) {
    return list("place = ?1 and state in ('available', 'issued') order by model, size, tag", field);
  }

  /** All helmets of the fields, in service or not. */
  public static List<HelmetCopy> allAt(Collection<String> fields) {
    return fields.isEmpty() ? List.of() : list("place in ?1 order by model, size, tag", fields);
  }

  public static List<HelmetCopy> ofTags(Collection<String> tags) {
    return tags.isEmpty() ? List.of() : list("tag in ?1", tags);
  }

  /** What the player has by inventory's records. */
  public static Optional<HelmetCopy> heldBy(UUID player) {
    return find("holder = ?1 order by tag", player).firstResultOptional();
  }

  /**
   * Locked until the transaction ends: whoever pulls the helmet meanwhile waits, and then sees the
   * sign-off that was made on it.
   */
  public static Optional<HelmetCopy> locked(String tag) {
    return findByIdOptional(tag, LockModeType.PESSIMISTIC_WRITE);
  }
}
