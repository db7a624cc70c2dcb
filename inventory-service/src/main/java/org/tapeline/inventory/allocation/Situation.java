package org.tapeline.inventory.allocation;

import java.time.Instant;
import java.util.List;
import java.util.Set;

/**
 * Who needs a helmet and what there is.
 *
 * @param helmets that may be given to anybody here
 * @param fields those places that are fields, which keep spares; the others are depots
 */
public record Situation(
    List<Seeker> seekers, List<FreeHelmet> helmets, Ways ways, Set<String> fields, Instant now) {}
