package org.tapeline.inventory.label;

/**
 * What a label says.
 *
 * @param model empty, as is the size, while it is not known what will carry it
 */
public record Label(String tag, String model, String size) {}
