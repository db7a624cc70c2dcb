package org.tapeline.inventory.allocation;

import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.allocation.Seeker.Liking;

/**
 * A helmet for a player.
 *
 * @param outcome what the commit did with it; empty before
 */
public record PlanLine(
    UUID player,
    String field,
    String tag,
    String model,
    String size,
    String place,
    String liking,
    int minutes,
    Optional<String> outcome) {
  /** How the tags of helmets begin that are not there yet. */
  static final String TO_BUY = "to-buy-";

  static PlanLine of(Allotment.Given g) {
    return new PlanLine(
        g.seeker().player(),
        g.seeker().field(),
        g.helmet().tag(),
        g.helmet().kind().model(),
        g.helmet().kind().size(),
        g.helmet().place(),
        g.liking().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        g.minutes(),
        Optional.empty());
  }

  public boolean isToBuy() {
    return tag.startsWith(TO_BUY);
  }

  public boolean isTravelling() {
    return !place.equals(field);
  }

  public boolean isSecondBest() {
    return !liking.equals(Liking.ADVISED.name().toLowerCase(Locale.ROOT));
  }
}
