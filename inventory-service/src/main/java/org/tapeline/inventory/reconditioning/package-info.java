/**
 * Reconditioning: which helmets are due, which of them can be spared now, and the batches that go
 * to the reconditioner and come back.
 */
package org.tapeline.inventory.reconditioning;
