package org.tapeline.notify.optout;

import java.time.Instant;
import java.util.UUID;

/**
 * A person turned off what is not about safety.
 *
 * @param recipient the guardian's id
 * @param channel the channel whose link was used; it holds for all of them
 * @param notice the notice whose link was used
 */
public record OptedOut(UUID recipient, String channel, UUID notice, Instant at) {}
