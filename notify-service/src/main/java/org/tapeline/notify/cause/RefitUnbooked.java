package org.tapeline.notify.cause;

import java.util.UUID;

/** What is read of fitting's {@code refit-unbooked}. */
public record RefitUnbooked(UUID refitCase, UUID player) {}
