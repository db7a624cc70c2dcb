package org.tapeline.journal.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;
import static org.tapeline.journal.JournalFixture.SOON;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Counted;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.Subscription;

@Tag("servers")
@Tag("containers")
@DisplayName("A rebuild of read models")
class RebuildTest {
  private static final Rebuild.Progress SILENT = (done, total) -> {};

  private JournalFixture on;
  private Tally tally;
  private Rebuild rebuild;

  @BeforeEach
  void open() {
    on = new JournalFixture();
    on.execute(Tally.TABLES);
    tally = new Tally(on.transactions);
    rebuild =
        new Rebuild(
            on.transactions,
            on.dataSource,
            JournalFixture.TYPES,
            () -> on.kafka.consumer("rebuild-" + on.topic));
  }

  @AfterEach
  void close() {
    on.close();
  }

  private void counts(String thing, int times) {
    for (int before = 0; before < times; before++) {
      tally.count(on, thing, before);
    }
  }

  private TableResult run() {
    return rebuild.run(List.of(tally.tallies()), false, SILENT).getFirst();
  }

  @Test
  @DisplayName("finds every row equal while events go on being recorded")
  void whileServing() throws Exception {
    counts("early", 30);
    AtomicBoolean enough = new AtomicBoolean();
    AtomicInteger recorded = new AtomicInteger();
    ExecutorService writer = on.writer();
    Future<?> writing =
        writer.submit(
            () -> {
              while (!enough.get()) {
                tally.count(on, "busy", recorded.getAndIncrement());
              }
            });
    await().atMost(SOON).until(() -> recorded.get() > 20);
    TableResult result = run();
    enough.set(true);
    writing.get(20, TimeUnit.SECONDS);
    assertThat(result.differing()).as(result.toString()).isZero();
    assertThat(result.rows()).isEqualTo(2);
    assertThat(on.number("select times from tally where thing = 'busy'")).isEqualTo(recorded.get());
  }

  @Test
  @DisplayName("counts an event that is committed late, below those that were read before")
  void committedLate() throws Exception {
    CountDownLatch appended = new CountDownLatch(1);
    CountDownLatch mayCommit = new CountDownLatch(1);
    Future<?> late =
        on.writer()
            .submit(
                () ->
                    on.transactions.required(
                        connection -> {
                          tally.count(on, "late", 0);
                          appended.countDown();
                          waitFor(mayCommit);
                          return null;
                        }));
    waitFor(appended);
    counts("early", 3);
    TableResult result =
        rebuild
            .run(List.of(tally.tallies()), false, (done, total) -> mayCommit.countDown())
            .getFirst();
    late.get(20, TimeUnit.SECONDS);
    assertThat(result.differing()).as(result.toString()).isZero();
    assertThat(result.rows()).isEqualTo(2);
  }

  private static void waitFor(CountDownLatch latch) {
    try {
      assertThat(latch.await(20, TimeUnit.SECONDS)).isTrue();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  @DisplayName("names what somebody altered, removed or added, and puts it right")
  void tampered() {
    counts("altered", 3);
    counts("removed", 2);
    counts("untouched", 1);
    on.execute("update tally set times = 99, note = 'kept' where thing = 'altered'");
    on.execute("delete from tally where thing = 'removed'");
    on.execute("insert into tally values ('added', 1, 1)");
    TableResult result = run();
    assertThat(result.examples())
        .containsExactly("changed altered (times)", "extra added", "missing removed");
    assertThat(result.equal()).isEqualTo(1);
    assertThat(on.number("select times from tally where thing = 'altered' and note = 'kept'"))
        .isEqualTo(3);
    assertThat(on.number("select times from tally where thing = 'removed'")).isEqualTo(2);
    assertThat(on.number("select count(*) from tally")).isEqualTo(3);
    assertThat(run().differing()).isZero();
  }

  @Test
  @DisplayName("only says what differs when it is asked to compare")
  void compareOnly() {
    counts("altered", 3);
    on.execute("update tally set times = 99");
    assertThat(rebuild.run(List.of(tally.tallies()), true, SILENT).getFirst().changed())
        .isEqualTo(1);
    assertThat(on.number("select times from tally")).isEqualTo(99);
  }

  @Test
  @DisplayName("copies what the service has applied of its peers, and nothing that is parked")
  void copiesOfPeers() {
    counts("fine", 2);
    counts("poison", 2);
    on.relay().start();
    Subscription live =
        Subscription.named("test")
            .events(on.topic)
            .on(
                JournalFixture.COUNTED,
                Counted.class,
                (counted, event) -> {
                  if (counted.thing().equals("poison") && counted.number() == 2) {
                    throw new IllegalStateException("cannot be counted");
                  }
                  tally.keep(counted, event);
                });
    on.consumer(live).start();
    await()
        .atMost(SOON)
        .until(
            () ->
                on.number("select count(*) from heard") == 3
                    && on.number("select count(*) from inbox_parked") == 1);
    on.execute("update heard set number = 0 where thing = 'fine'");
    TableResult result = rebuild.run(List.of(tally.heard(on.topic)), false, SILENT).getFirst();
    assertThat(result.rows()).isEqualTo(3);
    assertThat(result.changed()).isEqualTo(2);
    assertThat(on.number("select count(distinct number) from heard where thing = 'fine'"))
        .isEqualTo(2);
  }

  @Test
  @DisplayName("passes over a state that could not be applied, once a later one was")
  void overtakenState() {
    counts("thing", 3);
    on.relay().start();
    on.consumer(newestOnly(Subscription.named("test").latest(on.topic))).start();
    await().atMost(SOON).until(() -> on.number("select count(*) from heard where number = 3") == 1);
    assertThat(on.number("select count(*) from inbox_parked")).isEqualTo(1);
    ReadModel model =
        ReadModel.of("heard", ReadTable.of("heard"))
            .fromPeers(copies -> newestOnly(copies.latest(on.topic)));
    TableResult result = rebuild.run(List.of(model), false, SILENT).getFirst();
    assertThat(result.rows()).isEqualTo(1);
    assertThat(result.differing()).as(result.toString()).isZero();
  }

  private Subscription newestOnly(Subscription to) {
    return to.on(
        JournalFixture.COUNTED,
        Counted.class,
        (counted, event) -> {
          if (counted.number() == 2) {
            throw new IllegalArgumentException("cannot be counted");
          }
          tally.forget(counted);
          tally.keep(counted, event);
        });
  }

  @Test
  @DisplayName("is refused while another one runs")
  void twoAtOnce() {
    counts("early", 1);
    rebuild.run(
        List.of(tally.tallies()),
        false,
        (done, total) ->
            assertThatThrownBy(this::run).hasMessageContaining("Another rebuild").isNotNull());
  }

  @Test
  @DisplayName("is undone when it would do more than fill its tables")
  void leadsToNothing() {
    counts("early", 1);
    ReadModel reacting =
        ReadModel.of("reacting", ReadTable.of("tally"))
            .fromJournal(Counted.class, event -> on.append("reaction", 0, 1));
    assertThatThrownBy(() -> rebuild.run(List.of(reacting), false, SILENT))
        .hasMessageContaining("wrote more than the tables");
    assertThat(on.number("select count(*) from journal")).isEqualTo(1);
    assertThat(on.number("select count(*) from journal_unsent")).isEqualTo(1);
  }

  @Test
  @DisplayName("changes nothing when it is killed on the way, and can be started again")
  void killed() throws Exception {
    counts("altered", 3);
    on.execute("update tally set times = 99");
    Process victim = KilledRebuild.start(on);
    assertThat(victim.inputReader().readLine()).isEqualTo(KilledRebuild.ON_THE_WAY);
    assertThat(on.number("select times from rebuild.tally")).isEqualTo(3);
    victim.destroyForcibly().waitFor(20, TimeUnit.SECONDS);
    assertThat(on.number("select times from tally")).isEqualTo(99);
    await().atMost(SOON).ignoreExceptions().until(() -> run().changed() == 1);
    assertThat(on.number("select times from tally")).isEqualTo(3);
  }

  @Test
  @DisplayName("leaves nothing behind once the service has started again after a kill")
  void tidied() throws Exception {
    counts("early", 1);
    Process victim = KilledRebuild.start(on);
    assertThat(victim.inputReader().readLine()).isEqualTo(KilledRebuild.ON_THE_WAY);
    rebuild.tidy();
    assertThat(on.number("select times from rebuild.tally")).as("while it runs").isEqualTo(1);
    victim.destroyForcibly().waitFor(20, TimeUnit.SECONDS);
    await()
        .atMost(SOON)
        .until(
            () -> {
              rebuild.tidy();
              return on.number("select count(*) from pg_namespace where nspname = 'rebuild'") == 0;
            });
  }
}
