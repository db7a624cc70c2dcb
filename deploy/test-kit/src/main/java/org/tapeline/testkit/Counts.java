package org.tapeline.testkit;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicReference;
import javax.sql.DataSource;
import org.awaitility.Awaitility;

/** Numbers out of a service's database. */
public final class Counts {
  private static final Duration BETWEEN = Duration.ofMillis(100);

  /** How much longer the rest is than the question before it. */
  private static final int REST = 30;

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

  /**
   * Waits until it says so much, or fails with the query when the time is over. Asking takes no
   * more than a small share of the time: what is watched may be timed.
   */
  public void awaitAtLeast(long wanted, String sql, Duration atMost) {
    AtomicReference<Duration> took = new AtomicReference<>(Duration.ZERO);
    Awaitility.await(sql)
        .atMost(atMost)
        .pollInterval((asked, before) -> BETWEEN.plus(took.get().multipliedBy(REST)))
        .until(
            () -> {
              long start = System.nanoTime();
              long has = of(sql);
              took.set(Duration.ofNanos(System.nanoTime() - start));
              return has >= wanted;
            });
  }
}
