package org.tapeline.notify.cause;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.notice.Urgency;

/**
 * What is known of a re-fit case, whatever came first.
 *
 * @param opening empty until {@code refit-opened} was seen
 * @param booking the newest one; empty while none is known, or none holds
 * @param calledOff what was booked last and does not take place; empty while a booking holds
 * @param closing empty while the case is open
 */
public record RefitCase(
    UUID id,
    UUID player,
    Optional<Opening> opening,
    Optional<Booking> booking,
    Optional<CalledOff> calledOff,
    Optional<Closing> closing) {

  /**
   * @param event the id of the event that said so
   * @param why a code such as {@code fit-failed} or {@code damage}
   */
  public record Opening(UUID event, Urgency urgency, String why, String field, String team) {}

  /**
   * @param event the id of the event that said so
   * @param revision rises with every booking of the case
   * @param field the code of the place
   */
  public record Booking(
      UUID event, long revision, String field, Instant startsAt, Instant endsAt, ZoneId zone) {
    public Booking {
      if (!endsAt.isAfter(startsAt)) {
        throw new IllegalArgumentException("A re-fit ends after it starts");
      }
    }

    /** The same date under the next revision, to call it off in a calendar. */
    Booking revised() {
      return new Booking(event, revision + 1, field, startsAt, endsAt, zone);
    }

    public Slot slot() {
      return new Slot(startsAt, field);
    }
  }

  /**
   * @param event the id of the event that said so
   * @param was what does not take place
   */
  public record CalledOff(UUID event, Booking was) {}

  /** When and where: what a person has to know; another one is worth a notice. */
  public record Slot(Instant startsAt, String field) {}

  /**
   * @param event the id of the event that said so
   * @param fitted whether a fit check passed; otherwise the case was cancelled
   */
  public record Closing(UUID event, boolean fitted) {}

  public RefitCase {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(player, "player");
  }
}
