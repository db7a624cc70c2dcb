package org.tapeline.sizing.fitting;

import java.time.Instant;
import java.util.UUID;

/** What sizing reads of a passed fit check. */
public record FitPassed(UUID player, String model, String size, Instant at) {}
