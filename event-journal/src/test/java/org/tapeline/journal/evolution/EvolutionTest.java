package org.tapeline.journal.evolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;
import static org.tapeline.journal.JournalFixture.SOON;

import java.nio.charset.StandardCharsets;
import java.sql.PreparedStatement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Cause;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Journal;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamConflict;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.store.PostgresJournal;

@Tag("servers")
@Tag("containers")
@DisplayName("An event of which there are three versions")
class EvolutionTest {
  private static final StreamName STREAM = StreamName.of("thing", "t", "t");

  private JournalFixture on;

  @BeforeEach
  void open() {
    on = new JournalFixture();
    on.execute("create table weight (grams integer not null, scale text not null)");
  }

  @AfterEach
  void close() {
    on.close();
  }

  private Journal speaking(EventTypes types) {
    return new PostgresJournal(on.transactions, types, Clock.systemUTC(), () -> {});
  }

  private static void weigh(Journal journal, long before, int grams) {
    journal.append(
        STREAM, before, List.of(new Weighed("t", grams, "new")), Cause.command(UuidV7.next()));
  }

  private void eachVersionOnce() {
    weigh(speaking(Weighed.types().writing("test.weighed.v1")), 0, 28);
    weigh(speaking(Weighed.types().writing("test.weighed.v2")), 1, 56);
    weigh(speaking(Weighed.types()), 2, 84);
  }

  private Subscription keeping() {
    return Weighed.read(
        Subscription.named("test")
            .events(on.topic)
            .on(
                Weighed.TYPE + "v3",
                Weighed.class,
                (weighed, event) ->
                    on.transactions.required(
                        connection -> {
                          try (PreparedStatement insert =
                              connection.prepareStatement("insert into weight values (?, ?)")) {
                            insert.setInt(1, weighed.grams());
                            insert.setString(2, weighed.scale());
                            return insert.executeUpdate();
                          }
                        })));
  }

  @Test
  @DisplayName("is read from the journal in the newest, whichever was written")
  void fromTheJournal() {
    eachVersionOnce();
    assertThat(on.number("select count(distinct type) from journal")).isEqualTo(3);
    assertThat(on.number("select (data ->> 'ounces')::int from journal where version = 1"))
        .isEqualTo(1);
    assertThat(speaking(Weighed.types()).load(STREAM))
        .extracting(RecordedEvent::data)
        .containsExactly(
            new Weighed("t", 28, "not-stated"),
            new Weighed("t", 56, "not-stated"),
            new Weighed("t", 84, "new"));
  }

  @Test
  @DisplayName("is read from a topic in the newest, whichever was sent, and none is parked")
  void fromTheTopic() {
    eachVersionOnce();
    on.relay().start();
    on.consumer(keeping()).start();
    await().atMost(SOON).until(() -> on.number("select count(*) from weight") == 3);
    assertThat(on.number("select sum(grams) from weight")).isEqualTo(168);
    assertThat(on.number("select count(*) from weight where scale = 'not-stated'")).isEqualTo(2);
    assertThat(on.number("select count(*) from inbox_parked")).isZero();
  }

  @Test
  @DisplayName("may be written in two at once: nothing is lost, doubled, parked or out of order")
  void sideBySide() throws Exception {
    AtomicInteger conflicts = new AtomicInteger();
    List<Future<?>> copies = new ArrayList<>();
    for (EventTypes types : List.of(Weighed.types().writing("test.weighed.v1"), Weighed.types())) {
      Journal journal = speaking(types);
      on.relay().start();
      on.consumer(keeping()).start();
      ExecutorService copy = on.writer();
      copies.add(copy.submit(() -> weighOften(journal, conflicts)));
    }
    for (Future<?> copy : copies) {
      copy.get(30, TimeUnit.SECONDS);
    }
    await().atMost(SOON).until(() -> on.number("select count(*) from weight") >= 60);
    await().atMost(SOON).until(() -> on.number("select count(*) from journal_unsent") == 0);
    assertThat(on.number("select count(*) from weight")).isEqualTo(60);
    assertThat(on.number("select sum(grams) from weight")).isEqualTo(60 * 28);
    assertThat(on.number("select count(*) from inbox_parked")).isZero();
    assertThat(on.number("select count(distinct type) from journal")).isEqualTo(2);
    assertThat(on.onTopic().stream().map(EvolutionTest::version).distinct())
        .as("in order, where conflicts were " + conflicts)
        .isSorted()
        .hasSize(60);
  }

  private static long version(ConsumerRecord<String, byte[]> record) {
    return Long.parseLong(
        new String(
            record.headers().lastHeader("ce_streamversion").value(), StandardCharsets.UTF_8));
  }

  private static void weighOften(Journal journal, AtomicInteger conflicts) {
    for (int done = 0; done < 30; ) {
      try {
        weigh(journal, journal.version(STREAM), 28);
        done++;
      } catch (StreamConflict e) {
        conflicts.incrementAndGet();
      }
    }
  }

  @Test
  @DisplayName("is not written in a version to which there is no way back")
  void noWayBack() {
    EventTypes types = EventTypes.of("test").with("weighed", 3, Weighed.class);
    assertThatThrownBy(() -> types.writing("test.weighed.v2")).hasMessageContaining("any more");
    assertThatThrownBy(() -> types.writing("test.unheard.v1")).hasMessageContaining("No event");
  }
}
