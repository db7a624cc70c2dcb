package org.tapeline.journal.inbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.journal.JournalFixture.COUNTED;
import static org.tapeline.journal.JournalFixture.SOON;

import java.nio.charset.StandardCharsets;
import java.sql.PreparedStatement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.kafka.clients.producer.Producer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.header.internals.RecordHeaders;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Counted;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.Subscription;

@Tag("servers")
@Tag("containers")
@DisplayName("The inbox")
class InboxTest {
  private JournalFixture on;
  private Producer<String, byte[]> peer;

  @BeforeEach
  void open() {
    on = new JournalFixture();
    peer = on.running(on.kafka.producer());
    on.execute("create table effect (thing text not null, number integer not null)");
  }

  @AfterEach
  void close() {
    on.close();
  }

  @Test
  @DisplayName("has each effect once though every record comes three times")
  void repeatsHaveNoEffect() {
    for (int repeat = 0; repeat < 3; repeat++) {
      for (int version = 1; version <= 5; version++) {
        send("s", version);
      }
    }
    on.consumer(counting()).start();
    // Behind the repeats in their partition; another stream may be in one that is read before.
    send("s", 6);
    await().atMost(SOON).until(() -> effects("s").contains(6));
    assertThat(effects("s")).containsExactly(1, 2, 3, 4, 5, 6);
  }

  @Test
  @DisplayName("has each effect once though offsets were lost after the effect was committed")
  void offsetsLostAfterTheEffect() {
    AtomicInteger commits = new AtomicInteger();
    Inbox inbox = new Inbox(on.transactions, counting(), Clock.systemUTC());
    InboxConsumer forgetful =
        new InboxConsumer(
            () -> ForgetfulConsumer.of(on.kafka.consumer("g-" + on.topic), commits, 2),
            counting().topics(),
            inbox,
            1);
    for (int version = 1; version <= 5; version++) {
      send("s", version);
    }
    on.running(forgetful).start();
    await().atMost(SOON).until(() -> commits.get() > 2);
    assertThat(effects("s")).containsExactly(1, 2, 3, 4, 5);
  }

  @Test
  @DisplayName("undoes an effect whose transaction fails before the commit, and does it again")
  void crashBetweenEffectAndCommit() {
    AtomicBoolean crash = new AtomicBoolean(true);
    Subscription subscription =
        Subscription.named("test")
            .events(on.topic)
            .on(
                COUNTED,
                Counted.class,
                (counted, event) -> {
                  effect(counted);
                  if (crash.getAndSet(false)) {
                    throw new IllegalStateException("the process died here");
                  }
                });
    send("s", 1);
    on.consumer(subscription).start();
    await().atMost(SOON).until(() -> !effects("s").isEmpty());
    assertThat(effects("s")).containsExactly(1);
    assertThat(parkedReasons("s")).isEmpty();
  }

  @Test
  @DisplayName("parks nothing because the database broke off, however often it did")
  void brokenConnectionsAreNobodysFault() {
    AtomicInteger broken = new AtomicInteger();
    Subscription subscription =
        Subscription.named("test")
            .events(on.topic)
            .on(
                COUNTED,
                Counted.class,
                (counted, event) -> {
                  if (broken.incrementAndGet() <= 8) {
                    breakOff();
                  }
                  effect(counted);
                });
    for (int version = 1; version <= 3; version++) {
      send("s", version);
    }
    on.consumer(subscription).start();
    await().atMost(SOON).until(() -> effects("s").size() == 3);
    assertThat(effects("s")).containsExactly(1, 2, 3);
    assertThat(parkedReasons("s")).isEmpty();
  }

  /** As the server does with all connections when it is stopped. */
  private void breakOff() {
    on.transactions.required(
        connection -> {
          try (PreparedStatement end =
              connection.prepareStatement("select pg_terminate_backend(pg_backend_pid())")) {
            return end.execute();
          }
        });
  }

  @Test
  @DisplayName(
      "parks a poison event and all after it of its stream, lets the rest flow, and replays")
  void poisonIsParkedAndReplayed() {
    AtomicBoolean mended = new AtomicBoolean();
    Subscription subscription =
        Subscription.named("test")
            .events(on.topic)
            .on(
                COUNTED,
                Counted.class,
                (counted, event) -> {
                  if (counted.thing().equals("bad") && counted.number() == 2 && !mended.get()) {
                    throw new IllegalStateException("cannot be counted");
                  }
                  effect(counted);
                });
    for (int version = 1; version <= 4; version++) {
      send("bad", version);
      send("good", version);
    }
    on.consumer(subscription).start();
    await().atMost(SOON).until(() -> effects("good").size() == 4);
    await().atMost(SOON).until(() -> parkedReasons("bad").size() == 3);
    assertThat(effects("bad")).containsExactly(1);
    assertThat(parkedReasons("bad")).containsExactly("failed", "behind", "behind");

    ParkedEvents parked =
        new ParkedEvents(
            on.transactions, new Inbox(on.transactions, subscription, Clock.systemUTC()));
    assertThat(parked.all().getFirst().detail()).contains("cannot be counted");
    assertThat(parked.replay("count-bad")).isZero();
    mended.set(true);
    assertThat(parked.replay("count-bad")).isEqualTo(3);
    assertThat(effects("bad")).containsExactly(1, 2, 3, 4);
    send("bad", 5);
    await().atMost(SOON).until(() -> effects("bad").size() == 5);
    assertThat(parked.all()).isEmpty();
  }

  @Test
  @DisplayName("parks what comes after a gap and applies it when the missing version comes")
  void gapIsShownAndHealed() {
    on.consumer(counting()).start();
    send("s", 1);
    send("s", 3);
    send("s", 4);
    await().atMost(SOON).until(() -> parkedReasons("s").size() == 2);
    assertThat(parkedReasons("s")).containsExactly("gap", "behind");
    assertThat(effects("s")).containsExactly(1);
    send("s", 2);
    await().atMost(SOON).until(() -> effects("s").size() == 4);
    assertThat(effects("s")).containsExactly(1, 2, 3, 4);
    assertThat(parkedReasons("s")).isEmpty();
  }

  @Test
  @DisplayName(
      "parks a type that nobody knows and a record that is no event, never marks them done")
  void unknownAndMalformedAreParked() {
    RecordHeaders unknown = headers("odd", 1, "org.tapeline.test.never-heard-of.v1");
    peer.send(
        new ProducerRecord<>(
            on.topic, null, "odd", "{}".getBytes(StandardCharsets.UTF_8), unknown));
    peer.send(
        new ProducerRecord<>(on.topic, "nobody", "not json".getBytes(StandardCharsets.UTF_8)));
    on.consumer(counting()).start();
    await()
        .atMost(SOON)
        .until(() -> on.number("select count(*) from inbox_parked").intValue() == 2);
    assertThat(parkedReasons("odd")).containsExactly("unknown-type");
    assertThat(on.number("select count(*) from inbox_parked where reason = 'malformed'"))
        .isEqualTo(1);
    assertThat(on.number("select count(*) from inbox_position")).isZero();
  }

  @Test
  @DisplayName(
      "makes the caused events in the transaction of the effect, once, with the chain's id")
  void causedEventsOnce() {
    Subscription subscription =
        Subscription.named("test")
            .events(on.topic)
            .on(
                COUNTED,
                Counted.class,
                (counted, event) ->
                    on.journal.append(
                        StreamName.of("answer", counted.thing(), counted.thing()),
                        counted.number() - 1,
                        List.of(counted),
                        Cause.of(event, "answering")));
    for (int repeat = 0; repeat < 2; repeat++) {
      send("s", 1);
      send("s", 2);
    }
    on.consumer(subscription).start();
    send("s", 3);
    await().atMost(SOON).until(() -> answers("s").size() >= 3);
    assertThat(answers("s")).hasSize(3);
    assertThat(answers("s").getFirst().correlationId()).isEqualTo(CORRELATION);
  }

  @Test
  @DisplayName(
      "passes over an older state of a compacted topic that comes late, and hears of erasure")
  void newestStateWins() {
    List<String> erased = new ArrayList<>();
    Subscription subscription =
        Subscription.named("test")
            .latest(on.topic)
            .on(COUNTED, Counted.class, (counted, event) -> effect(counted))
            .onErased(on.topic, "org.tapeline.test.counted", erased::add);
    send("s", 7);
    send("s", 3);
    send("s", 9);
    peer.send(new ProducerRecord<>(on.topic, null, "s", null, headers("s", 12, COUNTED)));
    on.consumer(subscription).start();
    await().atMost(SOON).until(() -> !erased.isEmpty());
    assertThat(effects("s")).containsExactly(7, 9);
    assertThat(erased).containsExactly("s");
  }

  private static final UUID CORRELATION = UUID.fromString("0198f0c2-0000-7000-8000-000000000001");

  private Subscription counting() {
    return Subscription.named("test")
        .events(on.topic)
        .on(COUNTED, Counted.class, (counted, event) -> effect(counted));
  }

  private void effect(Counted counted) {
    on.transactions.required(
        connection -> {
          try (PreparedStatement insert =
              connection.prepareStatement("insert into effect values (?, ?)")) {
            insert.setString(1, counted.thing());
            insert.setInt(2, counted.number());
            return insert.executeUpdate();
          }
        });
  }

  private List<Integer> effects(String thing) {
    return texts("select number::text from effect where thing = '" + thing + "' order by ctid")
        .stream()
        .map(Integer::valueOf)
        .toList();
  }

  private List<String> parkedReasons(String thing) {
    return texts(
        "select reason from inbox_parked where stream = 'count-" + thing + "' order by version");
  }

  private List<String> texts(String sql) {
    return on.transactions.required(
        connection -> {
          List<String> found = new ArrayList<>();
          try (var statement = connection.createStatement();
              var row = statement.executeQuery(sql)) {
            while (row.next()) {
              found.add(row.getString(1));
            }
          }
          return found;
        });
  }

  private List<org.tapeline.journal.RecordedEvent> answers(String thing) {
    return on.journal.load(StreamName.of("answer", thing, thing));
  }

  private void send(String thing, int version) {
    byte[] data =
        ("{\"thing\":\"" + thing + "\",\"number\":" + version + "}")
            .getBytes(StandardCharsets.UTF_8);
    peer.send(new ProducerRecord<>(on.topic, null, thing, data, headers(thing, version, COUNTED)));
    peer.flush();
  }

  private static RecordHeaders headers(String thing, int version, String type) {
    RecordHeaders headers = new RecordHeaders();
    UUID id = UUID.nameUUIDFromBytes((thing + version).getBytes(StandardCharsets.UTF_8));
    add(headers, "ce_specversion", "1.0");
    add(headers, "ce_id", id.toString());
    add(headers, "ce_source", "/tapeline/test");
    add(headers, "ce_type", type);
    add(headers, "ce_time", "2026-01-01T00:00:00Z");
    add(headers, "ce_subject", "count-" + thing);
    add(headers, "ce_streamversion", Integer.toString(version));
    add(headers, "ce_correlationid", CORRELATION.toString());
    add(headers, "ce_causationid", CORRELATION.toString());
    return headers;
  }

  private static void add(RecordHeaders headers, String name, String value) {
    headers.add(name, value.getBytes(StandardCharsets.UTF_8));
  }
}
