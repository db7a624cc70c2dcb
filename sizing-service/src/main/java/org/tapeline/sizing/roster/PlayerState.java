package org.tapeline.sizing.roster;

import java.util.List;
import java.util.Optional;
import org.tapeline.sizing.roster.PlayerEvent.ModelAdvice;

/**
 * A player as the events tell.
 *
 * @param head the newest measurement
 * @param advice the newest advice
 */
public record PlayerState(
    boolean enrolled,
    String team,
    String field,
    Optional<PlayerEvent.HeadMeasured> head,
    List<ModelAdvice> advice) {

  public static final PlayerState NEW = new PlayerState(false, "", "", Optional.empty(), List.of());
}
