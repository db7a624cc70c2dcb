package org.tapeline.fitting.fitday;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.Collection;
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

  /** The slots from now on that nobody has, at these fields. */
  static List<OpenSlot> open(Collection<String> fields, Instant now) {
    @SuppressWarnings("unchecked")
    List<Object[]> rows =
        getEntityManager()
            .createQuery(
                "select s.fitDay, d.field, s.startsAt, s.endsAt, s.lane from FitSlotRow s"
                    + " join FitDayRow d on d.fitDay = s.fitDay"
                    + " where d.field in (:fields) and d.cancelled = false"
                    + " and s.refitCase is null and s.startsAt >= :now")
            .setParameter("fields", fields)
            .setParameter("now", now)
            .getResultList();
    return rows.stream()
        .map(
            r ->
                new OpenSlot(
                    (UUID) r[0], (String) r[1], (Instant) r[2], (Instant) r[3], (Integer) r[4]))
        .toList();
  }

  static List<FitSlotRow> of(Collection<UUID> refitCases) {
    return refitCases.isEmpty() ? List.of() : list("refitCase in ?1", refitCases);
  }

  static void removeAll(UUID fitDay) {
    FitSlotRow.<FitSlotRow>list("fitDay", fitDay).forEach(FitSlotRow::delete);
    flush();
  }
}
