package org.tapeline.notify.help;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A guardian pressed "please call me" on a notice's page.
 *
 * @param help one a day for each guardian and matter
 * @param recipient the guardian's id
 * @param field whose fitters look after it; empty when none is known
 */
public record HelpAsked(
    UUID help, UUID notice, UUID recipient, Optional<String> field, Instant at) {}
