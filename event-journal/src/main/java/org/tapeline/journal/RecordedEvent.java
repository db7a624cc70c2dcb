package org.tapeline.journal;

import java.time.Instant;
import java.util.UUID;

/**
 * An event as it stands in the journal.
 *
 * @param position its place in the journal of this service; rises, may have gaps
 * @param stream the text form of its stream's name
 * @param version its place in the stream: 1, 2, 3 ... without gaps
 * @param type its full name, such as {@code org.tapeline.fitting.fit-passed.v1}
 * @param correlationId the same for everything that one outside command led to
 * @param causationId the command or event that led to this one directly
 * @param data the event itself, in the newest version of its type
 */
public record RecordedEvent(
    long position,
    UUID id,
    String stream,
    long version,
    String type,
    Instant time,
    UUID correlationId,
    UUID causationId,
    Record data) {}
