package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.words.Letter;

/**
 * A notice to be raised, with its words.
 *
 * @param id {@link Notices#idOf} of kind, about and recipient, or one that follows from it
 * @param about the case, request or event that it is about; of several the first
 * @param refitCase the case, when it is about one and no other
 * @param covers all that it is about, at least one
 * @param calendar an iCalendar file, when there is a date
 */
public record NewNotice(
    UUID id,
    NoticeKind kind,
    UUID about,
    String recipient,
    Urgency urgency,
    List<UUID> players,
    List<UUID> causes,
    Optional<UUID> refitCase,
    Optional<Instant> slotStartsAt,
    Optional<String> slotField,
    String template,
    int templateVersion,
    Letter letter,
    Optional<String> calendar,
    List<Cover> covers) {

  public NewNotice {
    players = List.copyOf(players);
    causes = List.copyOf(causes);
    covers = List.copyOf(covers);
    if (covers.isEmpty()) {
      throw new IllegalArgumentException("A notice is about something");
    }
  }

  /** About one thing. */
  public NewNotice(
      UUID id,
      NoticeKind kind,
      UUID about,
      String recipient,
      Urgency urgency,
      List<UUID> players,
      List<UUID> causes,
      Optional<UUID> refitCase,
      Optional<Instant> slotStartsAt,
      Optional<String> slotField,
      String template,
      int templateVersion,
      Letter letter,
      Optional<String> calendar) {
    this(
        id,
        kind,
        about,
        recipient,
        urgency,
        players,
        causes,
        refitCase,
        slotStartsAt,
        slotField,
        template,
        templateVersion,
        letter,
        calendar,
        List.of(
            new Cover(about, refitCase, players.stream().findFirst(), slotStartsAt, slotField)));
  }

  NoticeRaised raised(Instant at) {
    return new NoticeRaised(
        id,
        recipient,
        kind.code(),
        urgency.code(),
        players,
        causes,
        refitCase.orElse(null),
        template,
        templateVersion,
        letter.language(),
        at);
  }
}
