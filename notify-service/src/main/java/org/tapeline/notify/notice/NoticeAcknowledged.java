package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.UUID;

/** The person confirmed to have read the notice. */
public record NoticeAcknowledged(UUID notice, String recipient, Instant at)
    implements NoticeEvent {}
