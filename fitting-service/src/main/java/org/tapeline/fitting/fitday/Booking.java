package org.tapeline.fitting.fitday;

import java.time.Instant;
import java.util.UUID;

/** A slot of a fit day that a case has. */
public record Booking(UUID fitDay, String field, Instant startsAt, Instant endsAt, String zone) {}
