package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.UUID;

/**
 * Somebody of the staff told the person. It counts as much as a confirmation.
 *
 * @param way the code of a {@link ReachedBy}
 * @param by the staff id of who did it
 */
public record PersonReached(UUID notice, String recipient, String way, String by, Instant at)
    implements NoticeEvent {}
