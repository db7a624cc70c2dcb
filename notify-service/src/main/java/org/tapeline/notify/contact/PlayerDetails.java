package org.tapeline.notify.contact;

import java.util.UUID;

/** What is read of {@code player-details}: no more of a child than a notice, or staff, need. */
public record PlayerDetails(
    UUID player, String number, String givenName, String team, String field) {}
