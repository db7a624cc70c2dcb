package org.tapeline.notify.optout;

import java.time.Instant;
import java.util.UUID;

/**
 * A person turned on again what was turned off.
 *
 * @param recipient the guardian's id
 * @param by {@code guardian}, by the link of a notice; or {@code staff}, who were asked to
 */
public record OptedIn(UUID recipient, String by, Instant at) {}
