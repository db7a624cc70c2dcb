package org.tapeline.sizing.fitting;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.sizing.units.Interval95;

/**
 * A head as it was measured before a fit.
 *
 * @param spreadMm standard deviation of the measurement
 */
record MeasuredHead(double mm, double spreadMm) {
  static Optional<MeasuredHead> before(EntityManager entities, UUID player, Instant at) {
    @SuppressWarnings("unchecked")
    List<Tuple> rows =
        entities
            .createNativeQuery(
                "select value_mm as mm, uncertainty_mm as pm from head"
                    + " where player = ?1 and measured_at <= ?2 order by version desc limit 1",
                Tuple.class)
            .setParameter(1, player)
            .setParameter(2, at)
            .getResultList();
    return rows.stream()
        .findFirst()
        .map(
            row ->
                new MeasuredHead(
                    row.get("mm", Double.class), Interval95.spread(row.get("pm", Double.class))));
  }
}
