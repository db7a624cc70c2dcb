package org.tapeline.notify.channel;

import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Cause;

/**
 * A notice whose try has been noted.
 *
 * @param attempt which try this is over all channels, from 1
 * @param message empty when there is nobody, or nothing, to send to any more
 * @param erased whether the words are gone, since a person was erased
 */
record Claim(
    UUID notice,
    String channel,
    int attempt,
    Cause cause,
    Optional<Outgoing> message,
    boolean erased) {}
