package org.tapeline.journal.rebuild;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.apache.kafka.clients.consumer.Consumer;
import org.tapeline.journal.DatabaseFailure;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.inbox.TopicReplay;

/**
 * Builds read models again while the service goes on serving. The new tables grow beside the old
 * ones; at the end writers of these tables wait for a moment, the last events are shown, and what
 * differs is put right in one transaction. Until then nothing has changed, whatever happens.
 */
public final class Rebuild {
  private static final long LOCK = 0x7265_6275_696c_6421L;
  private static final Set<String> BUSY = Set.of("55P03", "40P01");
  private static final int TRIES = 40;
  private static final long REST_MILLIS = 250;

  private final Transactions transactions;
  private final DataSource dedicated;
  private final EventTypes types;
  private final Supplier<Consumer<String, byte[]>> consumers;

  /** Hears how far it has come, in events. */
  @FunctionalInterface
  public interface Progress {
    void at(long done, long total);
  }

  /**
   * @param dedicated gives connections outside of any pool: the lock goes with the process
   * @param consumers makes a consumer that commits no offsets by itself
   */
  public Rebuild(
      Transactions transactions,
      DataSource dedicated,
      EventTypes types,
      Supplier<Consumer<String, byte[]>> consumers) {
    this.transactions = transactions;
    this.dedicated = dedicated;
    this.types = types;
    this.consumers = consumers;
  }

  /**
   * @param compareOnly says what differs and changes nothing
   * @throws IllegalStateException when another rebuild of the service is running, or it could not
   *     be done; then nothing was changed
   */
  public List<TableResult> run(List<ReadModel> models, boolean compareOnly, Progress progress) {
    try (Connection holder = dedicated.getConnection()) {
      if (!alone(holder)) {
        throw new IllegalStateException(
            "Another rebuild of this service is running. Wait until it is done.");
      }
      return runAlone(models, compareOnly, progress);
    } catch (SQLException e) {
      throw new DatabaseFailure(e);
    }
  }

  /**
   * Drops what a rebuild left behind that was killed, unless one is running: copies of people must
   * not lie where nobody erases them.
   */
  public void tidy() {
    try (Connection holder = dedicated.getConnection()) {
      if (alone(holder)) {
        new Shadow(transactions).drop();
      }
    } catch (SQLException e) {
      throw new DatabaseFailure(e);
    }
  }

  private static boolean alone(Connection holder) throws SQLException {
    try (PreparedStatement lock = holder.prepareStatement("select pg_try_advisory_lock(?)")) {
      lock.setLong(1, LOCK);
      try (ResultSet row = lock.executeQuery()) {
        return row.next() && row.getBoolean(1);
      }
    }
  }

  private List<TableResult> runAlone(
      List<ReadModel> models, boolean compareOnly, Progress progress) {
    Shadow shadow = new Shadow(transactions);
    shadow.make(models.stream().flatMap(m -> m.tables().stream()).toList());
    JournalReplay journal = new JournalReplay(types, transactions, models);
    try (TopicReplay topics =
        new TopicReplay(
            consumers.get(),
            models.stream().map(ReadModel::copies).toList(),
            transactions,
            shadow.live())) {
      long total = transactions.required(journal::total) + topics.total();
      boolean more = true;
      while (more) {
        more = transactions.required(c -> readOn(c, shadow, journal, topics));
        long done = journal.done() + topics.done();
        progress.at(done, Math.max(done, total));
      }
      return swap(models, compareOnly, shadow, journal, topics);
    } finally {
      shadow.drop();
    }
  }

  /**
   * What a peer says follows from what this service said before: the journal is read to its end
   * before records are applied that were fetched earlier. True while there is more.
   */
  private static boolean readOn(
      Connection connection, Shadow shadow, JournalReplay journal, TopicReplay topics)
      throws SQLException {
    topics.fetch();
    return shadow.within(
        connection,
        c -> {
          if (journal.next(c)) {
            return true;
          }
          topics.apply(c);
          return !topics.atEnd();
        });
  }

  private List<TableResult> swap(
      List<ReadModel> models,
      boolean compareOnly,
      Shadow shadow,
      JournalReplay journal,
      TopicReplay topics) {
    RuntimeException last = null;
    for (int tries = 0; tries < TRIES; tries++) {
      JournalReplay.Mark inJournal = journal.mark();
      TopicReplay.Mark inTopics = topics.mark();
      try {
        return transactions.required(c -> swap(c, models, compareOnly, shadow, journal, topics));
      } catch (RuntimeException e) {
        if (!busy(e)) {
          throw e;
        }
        last = e;
        journal.goBackTo(inJournal);
        topics.goBackTo(inTopics);
        rest();
      }
    }
    throw new IllegalStateException(
        "The tables are written to without a pause. Nothing was changed; start again later.", last);
  }

  private static List<TableResult> swap(
      Connection connection,
      List<ReadModel> models,
      boolean compareOnly,
      Shadow shadow,
      JournalReplay journal,
      TopicReplay topics)
      throws SQLException {
    lock(connection, shadow.live(), models);
    boolean more = true;
    while (more) {
      more = readOn(connection, shadow, journal, topics);
    }
    topics.mustBeWhole();
    for (ReadModel model : models) {
      for (ReadModel.Fill fill : model.fills()) {
        shadow.within(
            connection,
            c -> {
              fill.run(c, shadow.live());
              return null;
            });
      }
    }
    List<TableResult> results = new ArrayList<>();
    List<TableComparison> comparisons = new ArrayList<>();
    for (ReadModel model : models) {
      for (ReadTable table : model.tables()) {
        TableComparison comparison = new TableComparison(connection, shadow.live(), table);
        results.add(comparison.compare(model.name()));
        comparisons.add(comparison);
      }
    }
    if (!compareOnly) {
      for (TableComparison comparison : comparisons.reversed()) {
        comparison.deleteExtra();
      }
      for (TableComparison comparison : comparisons) {
        comparison.changeAndInsert();
      }
    }
    return results;
  }

  /**
   * Who reads goes on reading; who writes waits. It waits for nobody as long as PostgreSQL lets two
   * wait for each other before it ends one of them: this one gives way and tries again.
   */
  private static void lock(Connection connection, String live, List<ReadModel> models)
      throws SQLException {
    Shadow.run(connection, "set local lock_timeout = '600ms'");
    String tables =
        models.stream()
            .flatMap(model -> model.tables().stream())
            .map(table -> live + "." + table.name())
            .collect(Collectors.joining(", "));
    Shadow.run(connection, "lock table " + tables + " in share row exclusive mode");
  }

  private static boolean busy(Throwable why) {
    for (Throwable cause = why; cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLException e && BUSY.contains(e.getSQLState())) {
        return true;
      }
    }
    return false;
  }

  private static void rest() {
    try {
      Thread.sleep(REST_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    }
  }
}
