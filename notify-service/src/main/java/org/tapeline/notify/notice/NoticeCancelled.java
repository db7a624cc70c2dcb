package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.UUID;

/**
 * The notice was overtaken before any try to send it.
 *
 * @param why {@code case-closed}
 */
public record NoticeCancelled(UUID notice, String recipient, String why, Instant at)
    implements NoticeEvent {}
