package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.UUID;

/**
 * One channel could not reach the person; the next one is tried.
 *
 * @param from the channel that is exhausted
 * @param to the channel that is tried now
 * @param why the code of a {@link WhyUndeliverable}
 */
public record NoticeMovedOn(
    UUID notice, String recipient, String from, String to, String why, Instant at)
    implements NoticeEvent {}
