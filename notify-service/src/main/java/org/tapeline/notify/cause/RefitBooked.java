package org.tapeline.notify.cause;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * What is read of fitting's {@code refit-booked}.
 *
 * @param zone the field's time zone, such as {@code America/Denver}
 * @param chosenWith the notice by whose link a guardian chose it; empty when it was booked for them
 */
public record RefitBooked(
    UUID refitCase,
    UUID player,
    String field,
    Instant startsAt,
    Instant endsAt,
    String zone,
    Optional<UUID> chosenWith) {}
