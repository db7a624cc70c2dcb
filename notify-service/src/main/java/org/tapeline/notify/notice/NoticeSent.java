package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.UUID;

/**
 * The channel took the notice over.
 *
 * @param channel {@code mail} or {@code text}
 * @param attempt which try it was, from 1
 */
public record NoticeSent(UUID notice, String recipient, String channel, int attempt, Instant at)
    implements NoticeEvent {}
