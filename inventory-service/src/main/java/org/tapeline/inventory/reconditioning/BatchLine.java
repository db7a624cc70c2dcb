package org.tapeline.inventory.reconditioning;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/** A helmet of a batch; the outcome is empty while nothing is known of it. */
public record BatchLine(
    UUID batch,
    String tag,
    String model,
    String size,
    boolean packed,
    Optional<String> outcome,
    Optional<LocalDate> certifiedUntil,
    Optional<Long> costCents,
    Optional<LocalDate> backOn) {
  public boolean isOut() {
    return outcome.isEmpty();
  }

  static BatchLine read(ResultSet row) throws SQLException {
    return new BatchLine(
        row.getObject("batch", UUID.class),
        row.getString("tag"),
        row.getString("model"),
        row.getString("size"),
        row.getBoolean("packed"),
        Optional.ofNullable(row.getString("outcome")),
        Optional.ofNullable(row.getObject("certified_until", LocalDate.class)),
        Optional.ofNullable(row.getObject("cost_cents", Long.class)),
        Optional.ofNullable(row.getObject("back_on", LocalDate.class)));
  }
}
