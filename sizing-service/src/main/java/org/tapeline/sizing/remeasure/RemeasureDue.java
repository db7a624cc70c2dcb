package org.tapeline.sizing.remeasure;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A head should be measured again.
 *
 * @param measuredOn day of the measurement that has grown old
 * @param why {@code outgrowing} the size, or {@code old}: a year has passed
 * @param chance that the head is beyond its size by the end of the season, 0 to 1
 */
public record RemeasureDue(
    UUID player, LocalDate measuredOn, String why, double chance, Instant at) {}
