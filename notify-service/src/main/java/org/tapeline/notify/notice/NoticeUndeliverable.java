package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.UUID;

/**
 * The notice will not be tried on this channel again.
 *
 * @param why the code of a {@link WhyUndeliverable}
 */
public record NoticeUndeliverable(
    UUID notice, String recipient, String channel, String why, Instant at) implements NoticeEvent {}
