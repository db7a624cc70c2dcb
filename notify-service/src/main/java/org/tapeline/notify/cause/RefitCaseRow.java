package org.tapeline.notify.cause;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.notify.notice.Urgency;

/** A re-fit case as it is kept; every event fills its own part, whatever came first. */
@Entity
@Table(name = "refit_case")
public class RefitCaseRow extends PanacheEntityBase {
  @Id
  @Column(name = "refit_case")
  public UUID refitCase;

  public UUID player;

  @Column(name = "opened_event")
  public UUID openedEvent;

  @Column(name = "opened_at")
  public Instant openedAt;

  @Column(name = "correlation_id")
  public UUID correlationId;

  public String urgency;
  public String why;
  public String field;
  public String team;

  @Column(name = "booking_event")
  public UUID bookingEvent;

  @Column(name = "booking_version")
  public Long bookingVersion;

  @Column(name = "booking_field")
  public String bookingField;

  @Column(name = "starts_at")
  public Instant startsAt;

  @Column(name = "ends_at")
  public Instant endsAt;

  public String zone;

  /** By whose link a guardian chose the slot; null when it was booked for them. */
  @Column(name = "booking_notice")
  public UUID bookingNotice;

  /** Says that the booking does not hold; null while it does. */
  @Column(name = "unbooked_event")
  public UUID unbookedEvent;

  @Column(name = "closed_event")
  public UUID closedEvent;

  public String outcome;

  @Column(name = "wait_until")
  public Instant waitUntil;

  /**
   * The case, locked until the transaction ends, so that two events of it are looked at in turn.
   */
  static RefitCaseRow lockedOrNew(UUID refitCase, UUID player) {
    return (RefitCaseRow)
        getEntityManager()
            .createNativeQuery(
                """
                insert into refit_case (refit_case, player) values (?1, ?2)
                on conflict (refit_case) do update set player = excluded.player returning *
                """,
                RefitCaseRow.class)
            .setParameter(1, refitCase)
            .setParameter(2, player)
            .getSingleResult();
  }

  static List<RefitCaseRow> lockedOpenOf(UUID player) {
    List<?> rows =
        getEntityManager()
            .createNativeQuery(
                """
                select * from refit_case where player = ?1 and outcome is null
                order by refit_case for update
                """,
                RefitCaseRow.class)
            .setParameter(1, player)
            .getResultList();
    return rows.stream().map(RefitCaseRow.class::cast).toList();
  }

  /** All cases of a player that were opened, not locked. */
  static List<RefitCaseRow> openedOf(UUID player) {
    return list("player = ?1 and openedEvent is not null", player);
  }

  /** Open cases of players, not locked. */
  static List<RefitCaseRow> openOf(Collection<UUID> players) {
    return list("player in ?1 and outcome is null order by refitCase", players);
  }

  /** Cases whose wait is over, longest first; locked, and those that others look at left out. */
  static List<RefitCaseRow> waitedUntil(Instant now, int limit) {
    List<?> due =
        getEntityManager()
            .createNativeQuery(
                """
                select refit_case from refit_case where wait_until <= ?1
                order by wait_until limit ?2 for update skip locked
                """,
                UUID.class)
            .setParameter(1, now)
            .setParameter(2, limit)
            .getResultList();
    return due.stream().map(id -> (RefitCaseRow) findById(id)).toList();
  }

  void opened(RefitOpened opened, ReceivedEvent event, Instant waitUntil) {
    openedEvent = event.id();
    openedAt = opened.at();
    correlationId = event.correlationId();
    urgency = Urgency.of(opened.urgency()).code();
    why = opened.why();
    field = opened.field();
    team = opened.team();
    this.waitUntil = waitUntil;
  }

  /** An older booking that comes after a newer one changes nothing. */
  void booked(RefitBooked booked, ReceivedEvent event) {
    if (bookingVersion != null && bookingVersion >= event.version()) {
      return;
    }
    unbookedEvent = null;
    bookingEvent = event.id();
    bookingVersion = event.version();
    bookingField = booked.field();
    startsAt = booked.startsAt();
    endsAt = booked.endsAt();
    zone = ZoneId.of(booked.zone()).getId();
    bookingNotice = booked.chosenWith().orElse(null);
  }

  /** Of a booking that was never heard of there is nothing to say. */
  void unbooked(ReceivedEvent event) {
    if (bookingVersion != null && bookingVersion < event.version()) {
      bookingVersion = event.version();
      unbookedEvent = event.id();
    }
  }

  void closed(RefitClosed closed, ReceivedEvent event) {
    closedEvent = event.id();
    outcome = closed.outcome();
    waitUntil = null;
  }

  RefitCase view() {
    return new RefitCase(refitCase, player, opening(), booking(), calledOff(), closing());
  }

  private Optional<RefitCase.Opening> opening() {
    return Optional.ofNullable(openedEvent)
        .map(id -> new RefitCase.Opening(id, Urgency.of(urgency), why, field, team));
  }

  private Optional<RefitCase.Booking> booking() {
    return unbookedEvent == null ? lastBooking() : Optional.empty();
  }

  private Optional<RefitCase.CalledOff> calledOff() {
    return unbookedEvent == null
        ? Optional.empty()
        : lastBooking().map(was -> new RefitCase.CalledOff(unbookedEvent, was));
  }

  private Optional<RefitCase.Booking> lastBooking() {
    return Optional.ofNullable(bookingEvent)
        .map(
            id ->
                new RefitCase.Booking(
                    id, bookingVersion, bookingField, startsAt, endsAt, ZoneId.of(zone)));
  }

  private Optional<RefitCase.Closing> closing() {
    return Optional.ofNullable(closedEvent)
        .map(id -> new RefitCase.Closing(id, outcome.equals("fitted")));
  }
}
