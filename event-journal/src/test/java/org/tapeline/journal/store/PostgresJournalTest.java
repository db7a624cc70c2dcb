package org.tapeline.journal.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.tapeline.journal.JournalFixture.stream;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.Connection;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Append;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Counted;
import org.tapeline.journal.DatabaseFailure;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Journal;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamConflict;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.verify.ChainCheck;

@Tag("servers")
@Tag("containers")
@DisplayName("The journal")
class PostgresJournalTest {
  private static JournalFixture on;

  @BeforeAll
  static void open() {
    on = new JournalFixture();
  }

  @AfterAll
  static void close() {
    on.close();
  }

  @Test
  @DisplayName("gives back what was appended, in order, with its cause")
  void givesBackWhatWasAppended() {
    Cause cause = Cause.command(UuidV7.next());
    on.journal.append(
        stream("kept"), 0, List.of(new Counted("kept", 1), new Counted("kept", 2)), cause);
    on.append("kept", 2, 3);

    List<RecordedEvent> events = on.journal.load(stream("kept"));

    assertThat(events)
        .extracting(RecordedEvent::data)
        .containsExactly(new Counted("kept", 1), new Counted("kept", 2), new Counted("kept", 3));
    assertThat(events).extracting(RecordedEvent::version).containsExactly(1L, 2L, 3L);
    assertThat(events.getFirst().correlationId()).isEqualTo(cause.correlationId());
    assertThat(events.getFirst().causationId()).isEqualTo(cause.id());
  }

  @Test
  @DisplayName("has nothing for a stream that nobody wrote")
  void hasNothingForAnUnknownStream() {
    assertThat(on.journal.load(stream("never"))).isEmpty();
  }

  @Test
  @DisplayName("refuses an append that was decided on an older version")
  void refusesAStaleAppend() {
    on.append("stale", 0, 1);
    assertThatThrownBy(() -> on.append("stale", 0, 2)).isInstanceOf(StreamConflict.class);
    assertThatThrownBy(() -> on.append("stale", 5, 2)).isInstanceOf(StreamConflict.class);
  }

  @Test
  @DisplayName("lets one of two writers on a stream win each version, and tells the other")
  void oneOfTwoWritersWins() throws Exception {
    int rounds = 40;
    CyclicBarrier together = new CyclicBarrier(2);
    Callable<Integer> writer =
        () -> {
          int won = 0;
          for (int version = 0; version < rounds; version++) {
            together.await();
            try {
              on.append("contested", version, version);
              won++;
            } catch (StreamConflict e) {
              // The other one was first.
            }
            together.await();
          }
          return won;
        };
    try (ExecutorService two = Executors.newFixedThreadPool(2)) {
      List<Future<Integer>> wins = new ArrayList<>(List.of(two.submit(writer), two.submit(writer)));
      assertThat(wins.get(0).get() + wins.get(1).get()).isEqualTo(rounds);
    }
    assertThat(on.journal.load(stream("contested"))).hasSize(rounds);
  }

  @Test
  @DisplayName("makes the same ids when a step is done again, so that it cannot count twice")
  void sameStepSameIds() {
    Cause cause = Cause.command(UuidV7.next());
    List<Counted> events = List.of(new Counted("again", 1));
    RecordedEvent first = on.journal.append(stream("again"), 0, events, cause).getFirst();

    assertThatThrownBy(() -> on.journal.append(stream("again"), 1, events, cause))
        .isInstanceOf(DatabaseFailure.class)
        .hasMessageContaining("event_id");
    RecordedEvent other =
        on.journal.append(stream("again"), 1, events, cause.step("later")).getFirst();
    assertThat(other.id()).isNotEqualTo(first.id());
    assertThat(first.id().version()).isEqualTo(7);
    assertThat(first.id().variant()).isEqualTo(2);
  }

  @Test
  @DisplayName("appends nothing when the caller's transaction is rolled back")
  void rollsBackWithTheCaller() {
    assertThatThrownBy(
            () ->
                on.transactions.required(
                    connection -> {
                      on.append("undone", 0, 1);
                      throw new IllegalStateException("changed my mind");
                    }))
        .hasMessage("changed my mind");
    assertThat(on.journal.load(stream("undone"))).isEmpty();
  }

  @Test
  @DisplayName("is written once: the database refuses to alter or remove a row")
  void isWrittenOnce() throws ExecutionException {
    on.append("fixed", 0, 1);
    for (String attempt :
        List.of(
            "update journal set version = 9", "delete from journal", "truncate journal cascade")) {
      assertThatThrownBy(() -> on.execute(attempt)).hasMessageContaining("written once");
    }
  }

  @Test
  @DisplayName("reads an event of an older version as the newest")
  void upcasts() {
    on.append("old", 0, 7);
    record CountedTwice(String thing, int number, String unit) {}
    EventTypes newer =
        EventTypes.of("test")
            .with("counted", 2, CountedTwice.class)
            .upcast("counted", 1, old -> ((ObjectNode) old).put("unit", "pieces"));
    Journal today = new PostgresJournal(on.transactions, newer, Clock.systemUTC(), () -> {});
    assertThat(today.load(stream("old")).getFirst().data())
        .isEqualTo(new CountedTwice("old", 7, "pieces"));
  }

  @Test
  @DisplayName("appends to many streams at once, each in its order and with its own cause")
  void appendsToMany() {
    on.append("many-1", 0, 1);
    Cause cause = Cause.command(UuidV7.next());
    List<Append> appends = new ArrayList<>();
    for (int i = 1; i <= 300; i++) {
      String name = "many-" + i;
      List<Counted> two = List.of(new Counted(name, 10 * i), new Counted(name, 10 * i + 1));
      appends.add(new Append(stream(name), i == 1 ? 1 : 0, two, cause));
    }

    List<RecordedEvent> events = on.journal.appendAll(appends);

    assertThat(events).hasSize(600);
    assertThat(events).extracting(RecordedEvent::position).isSorted();
    assertThat(events.subList(2, 4))
        .extracting(RecordedEvent::data)
        .containsExactly(new Counted("many-2", 20), new Counted("many-2", 21));
    Map<StreamName, List<RecordedEvent>> all =
        on.journal.loadAll(List.of(stream("many-1"), stream("many-300"), stream("never")));
    assertThat(all).containsOnlyKeys(stream("many-1"), stream("many-300"));
    assertThat(all.get(stream("many-1"))).isEqualTo(on.journal.load(stream("many-1")));
    assertThat(all.get(stream("many-1")))
        .extracting(RecordedEvent::version)
        .containsExactly(1L, 2L, 3L);
    assertThat(on.journal.version(stream("many-1"))).isEqualTo(3);
    assertThat(on.journal.version(stream("never"))).isZero();
    assertThat(
            on.number(
                "select count(*) from journal_unsent join journal using (position)"
                    + " where stream like 'count-many-%'"))
        .isEqualTo(601);
  }

  @Test
  @DisplayName("appends to none of many streams when one has moved on")
  void allOrNone() {
    on.append("whole-2", 0, 1);
    Cause cause = Cause.command(UuidV7.next());
    List<Append> appends =
        List.of(
            new Append(stream("whole-1"), 0, List.of(new Counted("whole-1", 1)), cause),
            new Append(stream("whole-2"), 0, List.of(new Counted("whole-2", 2)), cause));
    assertThatThrownBy(() -> on.journal.appendAll(appends)).isInstanceOf(StreamConflict.class);
    assertThat(on.journal.load(stream("whole-1"))).isEmpty();
    assertThatThrownBy(() -> on.journal.appendAll(List.of(appends.getFirst(), appends.getFirst())))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  @DisplayName("chains what is appended to many at once as if it were appended one by one")
  void sameChain() throws Exception {
    Cause cause = Cause.command(UuidV7.next());
    on.journal.appendAll(
        List.of(
            new Append(stream("chain-1"), 0, List.of(new Counted("chain-1", 1)), cause),
            new Append(stream("chain-2"), 0, List.of(new Counted("chain-2", 1)), cause)));
    on.append("chain-1", 1, 2);
    try (Connection connection = on.dataSource.getConnection()) {
      assertThat(ChainCheck.run(connection).faults()).isEmpty();
    }
  }
}
