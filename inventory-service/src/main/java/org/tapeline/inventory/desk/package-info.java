/**
 * The desk of the warehouse and the equipment manager: pages across features. What needs doing
 * today, stock as grids, what is short, and one search for everything. It reads, and changes
 * nothing.
 */
package org.tapeline.inventory.desk;
