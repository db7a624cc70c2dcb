package org.tapeline.journal.bench;

import io.agroal.api.AgroalDataSource;
import io.agroal.api.configuration.supplier.AgroalDataSourceConfigurationSupplier;
import io.agroal.api.security.NamePrincipal;
import io.agroal.api.security.SimplePassword;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.tapeline.journal.Append;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Counted;
import org.tapeline.journal.Journal;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.store.JdbcTransactions;
import org.tapeline.journal.store.PostgresJournal;

/** A journal with many events, and writers with a connection each. */
final class BenchJournal implements AutoCloseable {
  static final int WRITERS = 8;
  private static final int BATCH = 500;
  private static final Duration ROUND = Duration.ofSeconds(3);

  final JournalFixture on = new JournalFixture();
  final AgroalDataSource connections;
  final JdbcTransactions transactions;
  final Journal journal;
  private final ExecutorService writers = Executors.newFixedThreadPool(WRITERS);

  BenchJournal() throws SQLException {
    connections =
        AgroalDataSource.from(
            new AgroalDataSourceConfigurationSupplier()
                .connectionPoolConfiguration(
                    pool ->
                        pool.maxSize(WRITERS * 2)
                            .connectionFactoryConfiguration(
                                factory ->
                                    factory
                                        .jdbcUrl(on.dataSource.getUrl())
                                        .principal(new NamePrincipal(on.dataSource.getUser()))
                                        .credential(
                                            new SimplePassword(on.dataSource.getPassword())))));
    transactions = new JdbcTransactions(connections);
    journal = new PostgresJournal(transactions, JournalFixture.TYPES, Clock.systemUTC(), () -> {});
    on.execute(
        "create table raw (position bigint generated always as identity primary key,"
            + " id uuid not null, stream text not null, data json not null)");
  }

  /** Appends so many events more, in streams of five, all of them unsent. */
  void add(int events) {
    for (int done = 0; done < events; done += BATCH) {
      List<Append> appends = new ArrayList<>();
      for (int i = 0; i < BATCH / 5; i++) {
        appends.add(newStream(5));
      }
      journal.appendAll(appends);
    }
  }

  int size() {
    return on.number("select count(*) from journal").intValue();
  }

  private static Append newStream(int events) {
    String id = UuidV7.next().toString();
    List<Counted> counted = new ArrayList<>();
    for (int i = 0; i < events; i++) {
      counted.add(new Counted(id, i));
    }
    return new Append(JournalFixture.stream(id), 0, counted, Cause.command(UuidV7.next()));
  }

  /** Commands: each appends one event to a stream of its own, in its own transaction. */
  double commands() throws Exception {
    return all(() -> journal.appendAll(List.of(newStream(1))));
  }

  /** The limit of commands: single rows, each in its own transaction, as durable. */
  double rawInserts() throws Exception {
    return all(
        () -> {
          try (Connection connection = connections.getConnection();
              PreparedStatement insert =
                  connection.prepareStatement(
                      "insert into raw (id, stream, data) values (?, ?, ?::json)")) {
            UUID id = UuidV7.next();
            insert.setObject(1, id);
            insert.setString(2, "count-" + id);
            insert.setString(3, "{\"thing\":\"" + id + "\",\"number\":1}");
            insert.executeUpdate();
          }
        });
  }

  private interface Write {
    void once() throws SQLException;
  }

  private double all(Write write) throws InterruptedException, ExecutionException {
    long start = System.nanoTime();
    long end = start + ROUND.toNanos();
    List<Future<Long>> done = new ArrayList<>();
    for (int i = 0; i < WRITERS; i++) {
      done.add(
          writers.submit(
              () -> {
                long count = 0;
                while (System.nanoTime() < end) {
                  write.once();
                  count++;
                }
                return count;
              }));
    }
    long total = 0;
    for (Future<Long> count : done) {
      total += count.get();
    }
    return Rate.of(total, start);
  }

  @Override
  public void close() {
    writers.shutdownNow();
    connections.close();
    on.close();
  }
}
