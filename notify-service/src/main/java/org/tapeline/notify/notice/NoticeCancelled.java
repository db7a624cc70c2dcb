package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.UUID;

/**
 * The notice was overtaken, or turned off, before any channel took it.
 *
 * @param why {@code case-closed}, {@code overtaken} or {@code opted-out}
 */
public record NoticeCancelled(UUID notice, String recipient, String why, Instant at)
    implements NoticeEvent {}
