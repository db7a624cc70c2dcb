package org.tapeline.inventory.chart;

import java.util.List;

/**
 * A chart as the template {@code chart/figure} shows it.
 *
 * @param says the same in words
 * @param desk SVG text for a wide screen and paper; its colours follow the page; empty when it
 *     could not be drawn
 * @param phone the same for a narrow screen
 * @param columns the heads of the table with the numbers; the first is of text
 */
public record Picture(
    String title,
    String says,
    String desk,
    String phone,
    List<String> columns,
    List<List<String>> rows) {}
