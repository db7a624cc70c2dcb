package org.tapeline.notify.staff;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * What is read of inventory's {@code restock-requested}.
 *
 * @param place where it is needed
 * @param fromPlace where it comes from, when that is settled
 * @param item such as {@code jaw-pad-15mm} or {@code helmet:model-a:youth-medium}
 * @param quantity pieces, 1 or more
 */
public record RestockRequested(
    UUID request,
    String place,
    Optional<String> fromPlace,
    String item,
    int quantity,
    Instant expectedAt,
    Instant at) {}
