package org.tapeline.journal;

/** The database transactions of the service, whoever runs them: the container or plain JDBC. */
public interface Transactions {

  /** Runs in the caller's transaction; where there is none, in a new one that is committed. */
  <T> T required(SqlWork<T> work);

  /** Whether the calling thread is inside a transaction. */
  boolean active();

  /**
   * Sends to the database what was changed in memory, and forgets what was read there: a long
   * transaction of many small parts calls it after each, else every part looks through the things
   * of all before it.
   */
  void settle();

  /** Runs once the current transaction has committed, at once where there is none. */
  void afterCommit(Runnable action);
}
