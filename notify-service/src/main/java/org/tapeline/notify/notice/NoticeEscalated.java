package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.UUID;

/**
 * Nobody confirmed the notice in time, or it could not be delivered: the next step was taken.
 *
 * @param step the code of an {@link EscalationStep}
 * @param to the channel by which it goes once more; {@code null} when people were told
 */
public record NoticeEscalated(UUID notice, String recipient, String step, String to, Instant at)
    implements NoticeEvent {}
