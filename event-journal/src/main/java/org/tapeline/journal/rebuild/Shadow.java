package org.tapeline.journal.rebuild;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.tapeline.journal.SqlWork;
import org.tapeline.journal.Transactions;

/**
 * Empty twins of tables in a schema of their own. While a transaction looks there first, everything
 * that is written by a table's name goes into its twin, and everything else is read as it is.
 */
final class Shadow {
  static final String SCHEMA = "rebuild";

  /** What the running transaction has written outside of the twins, as PostgreSQL counts it. */
  private static final String WRITTEN_ELSEWHERE =
      "select coalesce(sum(n_tup_ins + n_tup_upd + n_tup_del), 0) from pg_stat_xact_user_tables"
          + " where schemaname <> '"
          + SCHEMA
          + "'";

  private final Transactions transactions;
  private final String live;

  Shadow(Transactions transactions) {
    this.transactions = transactions;
    this.live = transactions.required(c -> text(c, "select current_schema()"));
  }

  /** The schema of the tables that the service uses. */
  String live() {
    return live;
  }

  void make(List<ReadTable> tables) {
    transactions.required(
        connection -> {
          // One that was killed left its twins behind.
          run(connection, "drop schema if exists " + SCHEMA + " cascade");
          run(connection, "create schema " + SCHEMA);
          for (ReadTable table : tables) {
            twin(connection, table.name());
          }
          twin(connection, "inbox_position");
          return null;
        });
  }

  private void twin(Connection connection, String table) throws SQLException {
    run(
        connection,
        "create unlogged table %1$s.%2$s (like %3$s.%2$s including all)"
            .formatted(SCHEMA, table, live));
  }

  void drop() {
    transactions.required(
        connection -> {
          run(connection, "drop schema if exists " + SCHEMA + " cascade");
          return null;
        });
  }

  /**
   * Does the work with the twins in the tables' places.
   *
   * @throws IllegalStateException when it wrote anything else: then it is no read model, and the
   *     transaction must not be committed
   */
  <T> T within(Connection connection, SqlWork<T> work) throws SQLException {
    String before = text(connection, WRITTEN_ELSEWHERE);
    run(connection, "set local search_path = " + SCHEMA + ", " + live);
    T result = work.run(connection);
    transactions.settle();
    run(connection, "set local search_path = " + live);
    if (!text(connection, WRITTEN_ELSEWHERE).equals(before)) {
      throw new IllegalStateException("A rebuild wrote more than the tables of its read models");
    }
    return result;
  }

  static void run(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  private static String text(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery(sql)) {
      row.next();
      return row.getString(1);
    }
  }
}
