package org.tapeline.inventory.reconditioning;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/**
 * A batch in a list.
 *
 * @param state draft, sent or closed
 * @param packed ticked off while it is a draft
 * @param unknown of how many nothing is known yet
 */
public record BatchSummary(
    UUID batch,
    String place,
    String reconditioner,
    String state,
    Optional<LocalDate> sentOn,
    Optional<LocalDate> backBy,
    int helmets,
    int packed,
    int unknown,
    long costCents) {

  /** The state in more words: packed when all is ticked off, short when closed without all. */
  public String says() {
    return switch (state) {
      case "draft" -> helmets > 0 && packed == helmets ? "packed" : "draft";
      case "sent" -> unknown == 0 ? "all back" : unknown < helmets ? "partly back" : "sent";
      default -> unknown > 0 ? "closed, short" : "closed";
    };
  }

  static BatchSummary read(ResultSet row) throws SQLException {
    return new BatchSummary(
        row.getObject("batch", UUID.class),
        row.getString("place"),
        row.getString("reconditioner"),
        row.getString("state"),
        Optional.ofNullable(row.getObject("sent_on", LocalDate.class)),
        Optional.ofNullable(row.getObject("back_by", LocalDate.class)),
        row.getInt("helmets"),
        row.getInt("packed"),
        row.getInt("unknown"),
        row.getLong("cost"));
  }
}
