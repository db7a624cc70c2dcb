package org.tapeline.journal.quarkus;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.inject.Instance;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Status;
import jakarta.transaction.Synchronization;
import jakarta.transaction.TransactionSynchronizationRegistry;
import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.tapeline.journal.DatabaseFailure;
import org.tapeline.journal.SqlWork;
import org.tapeline.journal.Transactions;

/** The container's transactions: the journal's rows and Hibernate's entities commit together. */
final class JtaTransactions implements Transactions {
  private final DataSource dataSource;
  private final TransactionSynchronizationRegistry registry;
  private final Instance<EntityManager> entities;

  JtaTransactions(
      DataSource dataSource,
      TransactionSynchronizationRegistry registry,
      Instance<EntityManager> entities) {
    this.dataSource = dataSource;
    this.registry = registry;
    this.entities = entities;
  }

  @Override
  public <T> T required(SqlWork<T> work) {
    return active() ? run(work) : QuarkusTransaction.requiringNew().call(() -> run(work));
  }

  private <T> T run(SqlWork<T> work) {
    // The pool hands out the transaction's own connection; closing it only gives back the handle.
    try (Connection connection = dataSource.getConnection()) {
      return work.run(connection);
    } catch (SQLException e) {
      throw new DatabaseFailure(e);
    }
  }

  @Override
  public boolean active() {
    return registry.getTransactionStatus() != Status.STATUS_NO_TRANSACTION;
  }

  @Override
  public void settle() {
    if (entities.isResolvable()) {
      entities.get().flush();
      entities.get().clear();
    }
  }

  @Override
  public void afterCommit(Runnable action) {
    if (!active()) {
      action.run();
      return;
    }
    registry.registerInterposedSynchronization(
        new Synchronization() {
          @Override
          public void beforeCompletion() {
            // Nothing to do before: the action is for what has been committed.
          }

          @Override
          public void afterCompletion(int status) {
            if (status == Status.STATUS_COMMITTED) {
              action.run();
            }
          }
        });
  }
}
