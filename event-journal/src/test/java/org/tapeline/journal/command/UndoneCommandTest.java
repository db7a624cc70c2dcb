package org.tapeline.journal.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.tapeline.journal.JournalFixture.stream;

import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.BrokenBarrierException;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.postgresql.ds.PGSimpleDataSource;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.Counted;
import org.tapeline.journal.DatabaseFailure;
import org.tapeline.journal.Journal;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.store.JdbcTransactions;
import org.tapeline.journal.store.PostgresJournal;

@Tag("servers")
@Tag("containers")
@DisplayName("A command that the database undid")
class UndoneCommandTest {
  private static JournalFixture on;
  private static JdbcTransactions strict;
  private static CommandLog strictCommands;

  @BeforeAll
  static void open() {
    on = new JournalFixture();
    on.execute("create table seat (id int primary key, taken int not null)");
    on.execute("insert into seat values (1, 0), (2, 0), (3, 0)");
    PGSimpleDataSource source = on.relayConnections();
    source.setOptions("-c default_transaction_isolation=repeatable\\ read");
    strict = new JdbcTransactions(source);
    strictCommands = new PostgresCommandLog(strict, Clock.systemUTC());
  }

  @AfterAll
  static void close() {
    on.close();
  }

  @Test
  @DisplayName("to end a deadlock with another is done again: both are done, each once")
  void deadlock() throws Exception {
    AtomicInteger runs = new AtomicInteger();
    CyclicBarrier bothHaveOne = new CyclicBarrier(2);
    try (ExecutorService two = Executors.newFixedThreadPool(2)) {
      Future<Answer> there = two.submit(() -> takes(1, 2, bothHaveOne, runs));
      Future<Answer> back = two.submit(() -> takes(2, 1, bothHaveOne, runs));
      assertThat(there.get(30, TimeUnit.SECONDS).status()).isEqualTo(201);
      assertThat(back.get(30, TimeUnit.SECONDS).status()).isEqualTo(201);
    }
    assertThat(runs.get()).as("one of the two ran again").isGreaterThan(2);
    assertThat(on.number("select sum(taken) from seat where id in (1, 2)")).isEqualTo(4);
    assertThat(on.journal.load(stream("seat-1"))).hasSize(1);
    assertThat(on.journal.load(stream("seat-2"))).hasSize(1);
  }

  private static Answer takes(
      int first, int second, CyclicBarrier bothHaveOne, AtomicInteger runs) {
    CommandLog commands = new PostgresCommandLog(on.transactions, Clock.systemUTC());
    AtomicInteger mine = new AtomicInteger();
    UUID id = UuidV7.next();
    return commands.once(
        id,
        "take",
        List.of(first, second),
        () -> {
          runs.incrementAndGet();
          take(on.transactions, first);
          if (mine.incrementAndGet() == 1) {
            meet(bothHaveOne);
          }
          take(on.transactions, second);
          return done(on.journal, id, "seat-" + first);
        });
  }

  @Test
  @DisplayName("since another changed the same meanwhile is done again from the newer state")
  void serialization() {
    AtomicInteger runs = new AtomicInteger();
    UUID id = UuidV7.next();
    Answer answer =
        strictCommands.once(
            id,
            "take",
            3,
            () -> {
              if (runs.incrementAndGet() == 1) {
                on.execute("update seat set taken = taken + 10 where id = 3");
              }
              take(strict, 3);
              return done(journal(strict), id, "seat-3");
            });
    assertThat(answer.status()).isEqualTo(201);
    assertThat(runs).hasValue(2);
    assertThat(on.number("select taken from seat where id = 3")).isEqualTo(11);
    assertThat(on.journal.load(stream("seat-3"))).hasSize(1);
  }

  @Test
  @DisplayName("again and again is given up after four tries, and leaves nothing")
  void bounded() {
    on.execute("insert into seat values (4, 0)");
    AtomicInteger runs = new AtomicInteger();
    UUID id = UuidV7.next();
    assertThatThrownBy(
            () ->
                strictCommands.once(
                    id,
                    "take",
                    4,
                    () -> {
                      runs.incrementAndGet();
                      on.execute("update seat set taken = taken + 10 where id = 4");
                      take(strict, 4);
                      return done(journal(strict), id, "seat-4");
                    }))
        .isInstanceOf(DatabaseFailure.class);
    assertThat(runs).hasValue(4);
    assertThat(on.number("select taken from seat where id = 4")).isEqualTo(40);
    assertThat(on.journal.load(stream("seat-4"))).isEmpty();
  }

  @Test
  @DisplayName("for a fault of its own is not done again")
  void ownFault() {
    AtomicInteger runs = new AtomicInteger();
    CommandLog commands = new PostgresCommandLog(on.transactions, Clock.systemUTC());
    assertThatThrownBy(
            () ->
                commands.once(
                    UuidV7.next(),
                    "take",
                    5,
                    () -> {
                      runs.incrementAndGet();
                      sql(on.transactions, "insert into seat values (1, 0)");
                      return Answer.of(201, "never");
                    }))
        .isInstanceOf(DatabaseFailure.class);
    assertThat(runs).hasValue(1);
  }

  private static void take(JdbcTransactions in, int seat) {
    sql(in, "update seat set taken = taken + 1 where id = " + seat);
  }

  private static void sql(JdbcTransactions in, String text) {
    in.required(
        connection -> {
          try (Statement statement = connection.createStatement()) {
            return statement.executeUpdate(text);
          }
        });
  }

  private static Journal journal(JdbcTransactions in) {
    return new PostgresJournal(in, JournalFixture.TYPES, Clock.systemUTC(), () -> {});
  }

  private static Answer done(Journal journal, UUID id, String what) {
    Counted counted = new Counted(what, 0);
    journal.append(stream(what), 0, List.of(counted), Cause.command(id));
    return Answer.of(201, counted);
  }

  private static void meet(CyclicBarrier barrier) {
    try {
      barrier.await(20, TimeUnit.SECONDS);
    } catch (InterruptedException | BrokenBarrierException | TimeoutException e) {
      throw new IllegalStateException(e);
    }
  }
}
