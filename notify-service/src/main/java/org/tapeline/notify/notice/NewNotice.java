package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.words.Letter;

/**
 * A notice to be raised, with its words.
 *
 * @param id {@link Notices#idOf} of kind, about and recipient
 * @param about the case, request or event that it is about
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
    Optional<String> calendar) {

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
