package org.tapeline.notify.contact;

import java.util.UUID;

/** What is read of {@code player-details}: no more of a child than a notice says. */
public record PlayerDetails(UUID player, String givenName, String team, String field) {}
