package org.tapeline.notify.trace;

import java.time.Instant;
import java.util.UUID;

/**
 * A line of a notice's time line.
 *
 * @param at {@code null} when it is not known
 * @param sort cause, event, try, receipt or bounce
 * @param what in words
 * @param detail empty when there is no more to say
 * @param service who said so
 * @param id of the event; {@code null} for what is none
 */
public record Moment(
    Instant at, String sort, String what, String detail, String service, UUID id) {}
