package org.tapeline.inventory.label;

import org.tapeline.inventory.label.LabelSheet.Spot;

/**
 * A label at its place on the page.
 *
 * @param code the QR code of the helmet's page as a {@code data:} address
 * @param points how large the tag is written
 */
public record PlacedLabel(Label label, Spot spot, String code, double points) {}
