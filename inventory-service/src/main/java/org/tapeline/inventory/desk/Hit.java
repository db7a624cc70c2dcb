package org.tapeline.inventory.desk;

/**
 * Something that a search found.
 *
 * @param kind what it is, such as Helmet
 * @param said its name, by which it is linked
 * @param more what tells it from others
 * @param exact it is what was typed, and no guess
 */
public record Hit(String kind, String said, String more, String href, boolean exact) {}
