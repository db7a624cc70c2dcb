package org.tapeline.journal.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.tapeline.journal.DatabaseFailure;
import org.tapeline.journal.SqlWork;
import org.tapeline.journal.Transactions;

/** Transactions over plain JDBC, one at a time a thread: for tools that run without a container. */
public final class JdbcTransactions implements Transactions {
  private final DataSource dataSource;
  private final ThreadLocal<Current> current = new ThreadLocal<>();

  public JdbcTransactions(DataSource dataSource) {
    this.dataSource = dataSource;
  }

  @Override
  public <T> T required(SqlWork<T> work) {
    try {
      return current.get() == null ? begin(work) : work.run(current.get().connection);
    } catch (SQLException e) {
      throw new DatabaseFailure(e);
    }
  }

  private <T> T begin(SqlWork<T> work) throws SQLException {
    Current mine;
    T result;
    try (Connection connection = dataSource.getConnection()) {
      connection.setAutoCommit(false);
      mine = new Current(connection, new ArrayList<>());
      current.set(mine);
      try {
        result = work.run(connection);
        connection.commit();
      } catch (SQLException | RuntimeException | Error e) {
        rollBack(connection, e);
        throw e;
      } finally {
        current.remove();
      }
    }
    mine.afterCommit.forEach(Runnable::run);
    return result;
  }

  private static void rollBack(Connection connection, Throwable why) {
    try {
      connection.rollback();
    } catch (SQLException e) {
      why.addSuppressed(e);
    }
  }

  @Override
  public boolean active() {
    return current.get() != null;
  }

  @Override
  public void settle() {
    // Nothing is kept in memory here.
  }

  @Override
  public void afterCommit(Runnable action) {
    if (active()) {
      current.get().afterCommit.add(action);
    } else {
      action.run();
    }
  }

  private record Current(Connection connection, List<Runnable> afterCommit) {}
}
