package org.tapeline.sizing.whole;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.UUID;

/** Lets time pass for what was measured before. */
@ApplicationScoped
public class Months {
  private final EntityManager entities;

  Months(EntityManager entities) {
    this.entities = entities;
  }

  /** As if the player's heads had been measured so many months earlier. */
  @Transactional
  public void pass(UUID player, int months) {
    entities
        .createNativeQuery(
            "update head set measured_at = measured_at - make_interval(months => ?2)"
                + " where player = ?1")
        .setParameter(1, player)
        .setParameter(2, months)
        .executeUpdate();
  }
}
