package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * Somebody is to be told something.
 *
 * @param recipient a guardian's id or a staff id such as {@code depot}
 * @param kind the code of a {@link NoticeKind}
 * @param urgency the code of an {@link Urgency}
 * @param causes ids of the events that led to it; at least one
 * @param refitCase the case it belongs to; {@code null} where there is none
 * @param template the words used, and their version
 */
public record NoticeRaised(
    UUID notice,
    String recipient,
    String kind,
    String urgency,
    List<UUID> players,
    List<UUID> causes,
    UUID refitCase,
    String template,
    int templateVersion,
    String language,
    Instant at)
    implements NoticeEvent {

  public NoticeRaised {
    players = List.copyOf(players);
    causes = List.copyOf(causes);
  }
}
