package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.Optional;

/**
 * A notice as seen from its case.
 *
 * @param tried whether a try to send it was ever made
 * @param slotStartsAt the start of the re-fit that it told
 * @param slotField and its place's code
 */
public record NoticeOfCase(
    NoticeKind kind,
    boolean cancelled,
    boolean tried,
    Optional<Instant> slotStartsAt,
    Optional<String> slotField) {}
