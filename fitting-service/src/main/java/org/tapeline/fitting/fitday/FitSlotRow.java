package org.tapeline.fitting.fitday;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A slot of one fitter; free without a case. */
@Entity
@Table(name = "fit_slot")
@IdClass(FitSlotRow.Key.class)
public class FitSlotRow extends PanacheEntityBase {
  @Id
  @Column(name = "fit_day")
  public UUID fitDay;

  @Id
  @Column(name = "starts_at")
  public Instant startsAt;

  @Id public int lane;

  @Column(name = "ends_at")
  public Instant endsAt;

  @Column(name = "refit_case")
  public UUID refitCase;

  /** All three together. */
  public record Key(UUID fitDay, Instant startsAt, int lane) implements Serializable {}

  static void make(UUID fitDay, FitDaySlots.Slot slot) {
    FitSlotRow row = new FitSlotRow();
    row.fitDay = fitDay;
    row.startsAt = slot.startsAt();
    row.endsAt = slot.endsAt();
    row.lane = slot.lane();
    row.persist();
  }

  /** Written at once: the database lets a case have one slot only. */
  void free() {
    refitCase = null;
    persistAndFlush();
  }

  void take(UUID forCase) {
    refitCase = forCase;
    persistAndFlush();
  }

  static Optional<FitSlotRow> of(UUID refitCase) {
    return find("refitCase", refitCase).firstResultOptional();
  }

  static List<FitSlotRow> bookedOn(UUID fitDay) {
    return list("fitDay = ?1 and refitCase is not null order by startsAt, lane", fitDay);
  }

  static long freeOn(UUID fitDay) {
    return count("fitDay = ?1 and refitCase is null", fitDay);
  }

  /**
   * Until the transaction ends nobody else makes, frees or looks for slots. Without this, a fit day
   * that is announced at the very moment at which a replacement becomes known would not see the
   * case, nor the case the fit day, and the player would wait for a slot that nobody books.
   */
  static void lockSlots() {
    getEntityManager()
        .createNativeQuery("select 1 from (select pg_advisory_xact_lock(7163524090)) as locked")
        .getSingleResult();
  }

  /** The first free slot of a field, locked; slots that others are taking are passed over. */
  static Optional<FitSlotRow> takeFirstFree(String field, Instant earliest) {
    @SuppressWarnings("unchecked")
    List<FitSlotRow> rows =
        getEntityManager()
            .createNativeQuery(
                "select s.* from fit_slot s join fit_day d using (fit_day)"
                    + " where d.field = :field and not d.cancelled and s.refit_case is null"
                    + " and s.starts_at >= :earliest order by s.starts_at, s.lane"
                    + " limit 1 for update of s skip locked",
                FitSlotRow.class)
            .setParameter("field", field)
            .setParameter("earliest", earliest)
            .getResultList();
    return rows.stream().findFirst();
  }
}
