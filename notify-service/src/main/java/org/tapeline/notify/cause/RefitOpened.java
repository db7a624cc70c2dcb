package org.tapeline.notify.cause;

import java.time.Instant;
import java.util.UUID;

/**
 * What is read of fitting's {@code refit-opened}.
 *
 * @param urgency {@code do-not-wear} or {@code soon}
 * @param why a code such as {@code fit-failed}
 */
public record RefitOpened(
    UUID refitCase,
    UUID player,
    String field,
    String team,
    String urgency,
    String why,
    Instant at) {}
