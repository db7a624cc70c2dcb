package org.tapeline.notify.contact;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What is read of {@code guardian-details}.
 *
 * @param language BCP 47 tag
 */
public record GuardianDetails(
    UUID guardian,
    String name,
    Optional<String> email,
    Optional<String> phone,
    String language,
    List<UUID> players) {}
