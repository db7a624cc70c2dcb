package org.tapeline.notify.channel;

import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.words.Letter;

/**
 * A notice on its way through one channel.
 *
 * @param key tells the other side that a repeat is the same message
 * @param to the address on the channel
 * @param letter the words apart, from which a short message is made
 * @param calendar an iCalendar file
 * @param refitCase what belongs together
 * @param turnOff where such news can be turned off; empty for what cannot
 */
public record Outgoing(
    UUID notice,
    String key,
    String to,
    Letter letter,
    String subject,
    String plain,
    String html,
    Optional<String> calendar,
    Optional<UUID> refitCase,
    Optional<String> turnOff) {}
