package org.tapeline.testkit;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import javax.sql.DataSource;
import org.awaitility.Awaitility;

/** Numbers out of a service's database. */
public final class Counts {
  private static final Duration BETWEEN = Duration.ofMillis(100);

  private final DataSource database;

  public Counts(DataSource database) {
    this.database = database;
  }

  /** What a query of one number says now. */
  public long of(String sql) {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet result = statement.executeQuery(sql)) {
      result.next();
      return result.getLong(1);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Waits until it says so much, or fails with the query when the time is over. */
  public void awaitAtLeast(long wanted, String sql, Duration atMost) {
    Awaitility.await(sql)
        .atMost(atMost)
        .pollInterval(BETWEEN)
        .until(() -> of(sql), has -> has >= wanted);
  }
}
