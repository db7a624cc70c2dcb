package org.tapeline.notify.cause;

import java.util.UUID;

/**
 * What is read of fitting's {@code refit-closed}.
 *
 * @param outcome {@code fitted} or {@code cancelled}
 */
public record RefitClosed(UUID refitCase, UUID player, String outcome) {}
