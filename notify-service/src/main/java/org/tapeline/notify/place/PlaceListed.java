package org.tapeline.notify.place;

/**
 * What is read of inventory's {@code place-listed}.
 *
 * @param zone the place's time zone, such as {@code America/Denver}
 */
public record PlaceListed(String place, String name, String zone) {}
