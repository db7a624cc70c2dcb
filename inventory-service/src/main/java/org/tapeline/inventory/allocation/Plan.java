package org.tapeline.inventory.allocation;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/**
 * A plan as it stands.
 *
 * @param fingerprint of everything that it was worked out from
 * @param seekers players who need a helmet and whose size is known
 * @param helmets that were free
 * @param served players who get one by it
 * @param minutes what it costs all together
 * @param cost the same with what leaving players without counts
 * @param leastPossible no plan costs less; the same as {@code cost} when it is proved the best
 */
public record Plan(
    UUID plan,
    State state,
    PlanWish wish,
    String fingerprint,
    int policyVersion,
    int seekers,
    int helmets,
    int served,
    long minutes,
    long cost,
    long leastPossible,
    String madeBy,
    Instant madeAt,
    Optional<Instant> committedAt,
    Optional<Instant> keptUntil) {

  /** How far it has come. */
  public enum State {
    DRAFT,
    COMMITTED,
    OVER
  }

  public int left() {
    return seekers - served;
  }

  public boolean isDraft() {
    return state == State.DRAFT;
  }

  public boolean isCommitted() {
    return state == State.COMMITTED;
  }

  public boolean isOver() {
    return state == State.OVER;
  }

  public String says() {
    return state.name().toLowerCase(Locale.ROOT);
  }

  /** By how much another plan could be better at most. */
  public long gap() {
    return cost - leastPossible;
  }
}
