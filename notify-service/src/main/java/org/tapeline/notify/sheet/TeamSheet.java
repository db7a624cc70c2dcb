package org.tapeline.notify.sheet;

import java.util.List;

/**
 * A team's sheet: a list for the coach, and one slip for each family.
 *
 * @param team the team's code
 * @param name as people say it
 * @param printed when it was made, on the association's clock
 */
public record TeamSheet(String team, String name, String printed, List<Slip> slips) {}
