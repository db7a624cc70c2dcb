package org.tapeline.journal.backlog;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.tapeline.journal.Transactions;

/** Reads the backlog with two statements that look at nothing but what is left to do. */
public final class Backlogs {
  // The oldest of the unsent is the one with the lowest position, give or take what commits late.
  private static final String UNSENT =
      """
      select e.number + s.number, least(e.oldest, s.oldest) from
        (select count(*) as number,
          (select recorded_at from journal
            where position = (select min(position) from journal_unsent)) as oldest
          from journal_unsent) e,
        (select count(*) as number, min(changed_at) as oldest
          from current_state where unsent) s
      """;
  private static final String PARKED =
      "select topic, count(*), min(parked_at) from inbox_parked group by topic";

  private final Transactions transactions;

  public Backlogs(Transactions transactions) {
    this.transactions = transactions;
  }

  /**
   * @throws RuntimeException when the database is out of reach
   */
  public Backlog now() {
    return transactions.required(Backlogs::read);
  }

  private static Backlog read(Connection connection) throws SQLException {
    Map<String, Long> parked = new HashMap<>();
    Optional<Instant> oldestParked = Optional.empty();
    try (PreparedStatement select = connection.prepareStatement(PARKED);
        ResultSet row = select.executeQuery()) {
      while (row.next()) {
        parked.put(row.getString(1), row.getLong(2));
        Instant first = moment(row, 3).orElseThrow();
        oldestParked = oldestParked.filter(first::isAfter).or(() -> Optional.of(first));
      }
    }
    try (PreparedStatement select = connection.prepareStatement(UNSENT);
        ResultSet row = select.executeQuery()) {
      row.next();
      return new Backlog(row.getLong(1), moment(row, 2), parked, oldestParked);
    }
  }

  private static Optional<Instant> moment(ResultSet row, int column) throws SQLException {
    return Optional.ofNullable(row.getObject(column, OffsetDateTime.class))
        .map(OffsetDateTime::toInstant);
  }
}
