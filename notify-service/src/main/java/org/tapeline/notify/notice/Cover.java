package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * One thing that a notice covers: a case, a request, a cause.
 *
 * @param about what it is: with kind and recipient it is told once
 * @param slotStartsAt the re-fit that is told, or the day by which something is to be done
 * @param slotField the re-fit's place
 */
public record Cover(
    UUID about,
    Optional<UUID> refitCase,
    Optional<UUID> player,
    Optional<Instant> slotStartsAt,
    Optional<String> slotField) {}
