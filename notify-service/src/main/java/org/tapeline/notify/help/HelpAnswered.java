package org.tapeline.notify.help;

import java.time.Instant;
import java.util.UUID;

/**
 * Somebody called.
 *
 * @param recipient the guardian's id
 * @param by the staff id of who did it
 */
public record HelpAnswered(UUID help, UUID recipient, String by, Instant at) {}
