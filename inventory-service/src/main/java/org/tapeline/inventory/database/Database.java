package org.tapeline.inventory.database;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Synchronization;
import jakarta.transaction.TransactionSynchronizationRegistry;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tapeline.journal.Transactions;

/** SQL in the transaction of the caller; in one of its own where there is none. */
@ApplicationScoped
public class Database {
  private final Transactions transactions;
  private final TransactionSynchronizationRegistry registry;

  Database(Transactions transactions, TransactionSynchronizationRegistry registry) {
    this.transactions = transactions;
    this.registry = registry;
  }

  /** Reads a row. */
  @FunctionalInterface
  public interface RowReader<T> {
    T read(ResultSet row) throws SQLException;
  }

  public <T> List<T> list(String sql, RowReader<T> reader, Object... values) {
    return transactions.required(
        connection -> {
          try (PreparedStatement select = connection.prepareStatement(sql)) {
            bind(select, values);
            List<T> all = new ArrayList<>();
            try (ResultSet rows = select.executeQuery()) {
              while (rows.next()) {
                all.add(reader.read(rows));
              }
            }
            return all;
          }
        });
  }

  /** The first row, if there is one. */
  public <T> Optional<T> first(String sql, RowReader<T> reader, Object... values) {
    return list(sql, reader, values).stream().findFirst();
  }

  /** How many rows were changed. */
  public int change(String sql, Object... values) {
    return transactions.required(
        connection -> {
          try (PreparedStatement update = connection.prepareStatement(sql)) {
            bind(update, values);
            return update.executeUpdate();
          }
        });
  }

  /** The same change once for each row of values, sent together. */
  public void changeAll(String sql, List<Object[]> rows) {
    if (rows.isEmpty()) {
      return;
    }
    transactions.required(
        connection -> {
          try (PreparedStatement update = connection.prepareStatement(sql)) {
            for (Object[] values : rows) {
              bind(update, values);
              update.addBatch();
            }
            return update.executeBatch();
          }
        });
  }

  /** Keeps {@link #lock} of that name away, but not others that share it. */
  public void lockShared(String name) {
    list("select pg_advisory_xact_lock_shared(hashtextextended(?, 0))", row -> 0, name);
  }

  /** Lets only one transaction at a time go on that names the same thing. */
  public void lock(String name) {
    list("select pg_advisory_xact_lock(hashtextextended(?, 0))", row -> 0, name);
  }

  /** Does it at the end of the caller's transaction and as a part of it. */
  public void beforeCommit(Runnable action) {
    registry.registerInterposedSynchronization(
        new Synchronization() {
          @Override
          public void beforeCompletion() {
            action.run();
          }

          @Override
          public void afterCompletion(int status) {
            // What is done is done, or undone with the rest.
          }
        });
  }

  public void afterCommit(Runnable action) {
    transactions.afterCommit(action);
  }

  public static Instant instant(ResultSet row, String column) throws SQLException {
    return row.getObject(column, OffsetDateTime.class).toInstant();
  }

  private static void bind(PreparedStatement statement, Object... values) throws SQLException {
    for (int i = 0; i < values.length; i++) {
      Object value = values[i];
      statement.setObject(
          i + 1, value instanceof Instant instant ? instant.atOffset(ZoneOffset.UTC) : value);
    }
  }
}
