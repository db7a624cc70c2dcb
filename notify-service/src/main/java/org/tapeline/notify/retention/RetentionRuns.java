package org.tapeline.notify.retention;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.tapeline.journal.Transactions;

/** Deletes some rows, and counts in the same transaction what it deleted. */
@ApplicationScoped
class RetentionRuns {
  private static final String COUNT =
      """
      insert into retention_run (started_at, what, older_than, deleted) values (?, ?, ?, ?)
      on conflict (started_at, what) do update
        set deleted = retention_run.deleted + excluded.deleted
      """;

  private final Transactions transactions;

  RetentionRuns(Transactions transactions) {
    this.transactions = transactions;
  }

  /** What one run deleted of one thing. */
  public record Line(Instant startedAt, String what, Instant olderThan, int deleted) {}

  /** How many were deleted; fewer than the limit when no more are old. */
  int delete(Instant startedAt, Keeping keeping, Instant before, int limit) {
    return transactions.required(
        connection -> {
          int deleted;
          try (PreparedStatement delete = connection.prepareStatement(keeping.delete())) {
            delete.setObject(1, before.atOffset(ZoneOffset.UTC));
            delete.setInt(2, limit);
            deleted = delete.executeUpdate();
          }
          count(connection, startedAt, keeping.what(), before, deleted);
          return deleted;
        });
  }

  void count(Instant startedAt, String what, Instant before, int deleted) {
    transactions.required(
        connection -> {
          count(connection, startedAt, what, before, deleted);
          return null;
        });
  }

  private static void count(
      Connection connection, Instant startedAt, String what, Instant before, int deleted)
      throws SQLException {
    if (deleted == 0) {
      return;
    }
    try (PreparedStatement insert = connection.prepareStatement(COUNT)) {
      insert.setObject(1, startedAt.atOffset(ZoneOffset.UTC));
      insert.setString(2, what);
      insert.setObject(3, before.atOffset(ZoneOffset.UTC));
      insert.setInt(4, deleted);
      insert.executeUpdate();
    }
  }

  /** Newest first. */
  List<Line> newest(int most) {
    return transactions.required(
        connection -> {
          List<Line> lines = new ArrayList<>();
          try (PreparedStatement select =
              connection.prepareStatement(
                  "select * from retention_run order by started_at desc, what limit ?")) {
            select.setInt(1, most);
            try (ResultSet row = select.executeQuery()) {
              while (row.next()) {
                lines.add(
                    new Line(
                        time(row, "started_at"),
                        row.getString("what"),
                        time(row, "older_than"),
                        row.getInt("deleted")));
              }
            }
          }
          return lines;
        });
  }

  private static Instant time(ResultSet row, String column) throws SQLException {
    return row.getObject(column, OffsetDateTime.class).toInstant();
  }
}
