package org.tapeline.fitting.fitday;

import java.util.UUID;

/**
 * A place of a fit day that somebody had when the day was moved or cancelled.
 *
 * @param step how many slots after the day's first one, from 0
 * @param lane which of the fitters, from 1
 */
public record TakenPlace(UUID refitCase, int step, int lane, OpenSlot was) {}
