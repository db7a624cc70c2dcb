/**
 * Charts for all pages: records in, a picture out, no framework. A picture has its drawing for desk
 * and phone as SVG text, the words that say the same, and the numbers for a table below.
 */
package org.tapeline.inventory.chart;
