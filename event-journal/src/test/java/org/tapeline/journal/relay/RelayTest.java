package org.tapeline.journal.relay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.journal.JournalFixture.SOON;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.producer.Producer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.JournalFixture;

@Tag("servers")
@Tag("containers")
@DisplayName("The relay")
class RelayTest {
  private JournalFixture on;

  @BeforeEach
  void open() {
    on = new JournalFixture();
  }

  @AfterEach
  void close() {
    on.close();
  }

  @Test
  @DisplayName(
      "sends version 1 before version 2 though 2's transaction began first, past an open one")
  void keepsStreamOrderWhenTheOlderTransactionWritesLater() throws Exception {
    ExecutorService one = on.writer();
    ExecutorService two = on.writer();
    ExecutorService three = on.writer();
    Steps t1 = new Steps(on, one);
    Steps t3 = new Steps(on, three);

    t1.append("elsewhere", 0);
    two.submit(() -> on.append("s", 0, 1)).get();
    t3.append("late", 0);
    t1.append("s", 1);
    t1.commit();
    on.relay().start();

    await().atMost(SOON).until(() -> sent().get("s") != null && sent().get("s").size() == 2);
    assertThat(sent().get("s")).containsExactly(1L, 2L);
    assertThat(sent()).containsKey("elsewhere").doesNotContainKey("late");

    t3.commit();
    await().atMost(SOON).until(() -> sent().containsKey("late"));
  }

  @Test
  @DisplayName("loses and reorders nothing with 8 writers that commit out of order")
  void eightWritersOutOfOrder() throws Exception {
    on.relay().start();
    int writers = 8;
    int each = 60;
    Traffic traffic =
        new Traffic(new AtomicInteger(), new AtomicInteger(writers), new Semaphore(writers / 2));
    List<Future<?>> work = new ArrayList<>();
    for (int w = 0; w < writers; w++) {
      String own = "w" + w;
      work.add(on.writer().submit(() -> write(own, each, traffic)));
    }
    for (Future<?> done : work) {
      done.get();
    }
    await().atMost(SOON).until(() -> on.number("select count(*) from journal_unsent") == 0);
    Map<String, List<Long>> sent = sent();
    assertThat(sent).hasSize(writers);
    sent.values().forEach(versions -> assertThat(versions).containsExactlyElementsOf(upTo(each)));
  }

  /** Every fifth transaction stays open until three later ones of others have committed. */
  private void write(String stream, int count, Traffic traffic) {
    for (int i = 0; i < count; i++) {
      int version = i;
      on.transactions.required(
          connection -> {
            on.append(stream, version, version);
            if (version % 5 == 0) {
              traffic.letOthersPass();
            }
            return null;
          });
      traffic.committed.incrementAndGet();
    }
    traffic.busy.decrementAndGet();
  }

  /** At most half of the writers hold their transactions open, so that the others can pass. */
  private record Traffic(AtomicInteger committed, AtomicInteger busy, Semaphore holders) {

    void letOthersPass() {
      if (holders.tryAcquire()) {
        int until = committed.get() + 3;
        await().atMost(SOON).until(() -> committed.get() >= until || busy.get() <= 4);
        holders.release();
      }
    }
  }

  @Test
  @DisplayName("killed between sending and noting it sends again, and skips nothing")
  void killedBetweenSendAndNote() {
    for (int i = 0; i < 20; i++) {
      on.append("s", i, i);
    }
    AtomicBoolean kill = new AtomicBoolean(true);
    Supplier<Producer<String, byte[]>> producers =
        () ->
            faulty(
                on.kafka.producer(),
                "flush",
                (producer, arguments) -> {
                  producer.flush();
                  if (kill.getAndSet(false)) {
                    on.killRelayConnections();
                  }
                  return null;
                });
    on.relay(producers).start();

    await().atMost(SOON).until(() -> on.number("select count(*) from journal_unsent") == 0);
    List<Long> versions = sent().get("s");
    assertThat(versions).containsAll(upTo(20)).hasSizeGreaterThan(20);
    assertThat(firstTimes(versions)).containsExactlyElementsOf(upTo(20));
  }

  @Test
  @DisplayName("stops at the first record that Kafka refuses and goes on from there, in order")
  void stopsAtTheFirstFailedSend() {
    for (int i = 0; i < 10; i++) {
      on.append("s", i, i);
    }
    AtomicInteger sends = new AtomicInteger();
    Supplier<Producer<String, byte[]>> producers =
        () ->
            faulty(
                on.kafka.producer(),
                "send",
                (producer, arguments) ->
                    sends.incrementAndGet() == 4
                        ? CompletableFuture.failedFuture(new IllegalStateException("refused"))
                        : producer.send(record(arguments)));
    on.relay(producers).start();

    await().atMost(SOON).until(() -> on.number("select count(*) from journal_unsent") == 0);
    assertThat(firstTimes(sent().get("s"))).containsExactlyElementsOf(upTo(10));
  }

  @Test
  @DisplayName("has one leader of two, and the other takes over when its connection dies")
  void oneLeaderOfTwo() {
    Relay first = on.relay().start();
    await().atMost(SOON).until(first::leading);
    Relay second = on.relay().start();
    on.append("s", 0, 0);
    first.wake();
    await().atMost(SOON).until(() -> sent().containsKey("s"));
    assertThat(second.leading()).isFalse();

    first.close();
    on.append("s", 1, 1);
    await().atMost(SOON).until(second::leading);
    await().atMost(SOON).until(() -> sent().get("s").size() == 2);
    assertThat(sent().get("s")).containsExactly(1L, 2L);
  }

  @Test
  @DisplayName("is not held up by a transaction that stays open in another service's database")
  void ignoresOpenTransactionsElsewhere() throws Exception {
    try (JournalFixture other = new JournalFixture()) {
      Steps open = new Steps(other, other.writer());
      open.append("open", 0);
      on.relay().start();
      on.append("s", 0, 0);
      await().atMost(SOON).until(() -> sent().containsKey("s"));
      open.commit();
    }
  }

  @Test
  @DisplayName("sends again from any position, into a topic that was lost")
  void refillsALostTopic() {
    for (int i = 0; i < 5; i++) {
      on.append("s", i, i);
    }
    on.relay().start();
    await().atMost(SOON).until(() -> on.number("select count(*) from journal_unsent") == 0);
    on.execute("insert into journal_unsent select position from journal");
    await().atMost(SOON).until(() -> sent().get("s").size() == 10);
    assertThat(sent().get("s").subList(5, 10)).containsExactlyElementsOf(upTo(5));
  }

  private Map<String, List<Long>> sent() {
    Map<String, List<Long>> versions = new LinkedHashMap<>();
    for (ConsumerRecord<String, byte[]> record : on.onTopic()) {
      String stream = header(record, "ce_subject").replace("count-", "");
      versions
          .computeIfAbsent(stream, s -> new ArrayList<>())
          .add(Long.valueOf(header(record, "ce_streamversion")));
    }
    return versions;
  }

  private static String header(ConsumerRecord<String, byte[]> record, String name) {
    return new String(record.headers().lastHeader(name).value(), StandardCharsets.UTF_8);
  }

  private static List<Long> firstTimes(List<Long> versions) {
    return versions.stream().distinct().toList();
  }

  private static List<Long> upTo(int count) {
    return LongStream.rangeClosed(1, count).boxed().toList();
  }

  @SuppressWarnings("unchecked")
  private static ProducerRecord<String, byte[]> record(Object[] arguments) {
    return (ProducerRecord<String, byte[]>) arguments[0];
  }

  /** What a fault does instead of one method of the real producer. */
  private interface Fault {
    Object instead(Producer<String, byte[]> producer, Object[] arguments) throws Exception;
  }

  @SuppressWarnings("unchecked")
  private static Producer<String, byte[]> faulty(
      Producer<String, byte[]> real, String method, Fault fault) {
    return (Producer<String, byte[]>)
        Proxy.newProxyInstance(
            Producer.class.getClassLoader(),
            new Class<?>[] {Producer.class},
            (proxy, called, arguments) -> {
              if (called.getName().equals(method)) {
                return fault.instead(real, arguments);
              }
              try {
                return called.invoke(real, arguments);
              } catch (InvocationTargetException e) {
                throw e.getCause();
              }
            });
  }

  /** A transaction that is driven step by step from outside. */
  private static final class Steps {
    private final JournalFixture on;
    private final java.util.concurrent.BlockingQueue<Runnable> steps =
        new java.util.concurrent.LinkedBlockingQueue<>();
    private final Future<?> transaction;
    private final AtomicBoolean done = new AtomicBoolean();

    Steps(JournalFixture on, ExecutorService thread) {
      this.on = on;
      this.transaction = thread.submit(this::run);
    }

    private void run() {
      on.transactions.required(
          connection -> {
            while (!done.get()) {
              try {
                steps.take().run();
              } catch (InterruptedException e) {
                throw new IllegalStateException(e);
              }
            }
            return null;
          });
    }

    void append(String stream, long expected) throws InterruptedException {
      CountDownLatch appended = new CountDownLatch(1);
      steps.add(
          () -> {
            on.append(stream, expected, (int) expected);
            appended.countDown();
          });
      appended.await();
    }

    void commit() throws Exception {
      steps.add(() -> done.set(true));
      transaction.get();
    }
  }
}
