package org.tapeline.journal.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.tapeline.journal.JournalFixture.stream;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.CommandReused;
import org.tapeline.journal.Counted;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.UuidV7;

@Tag("servers")
@Tag("containers")
@DisplayName("A command")
class PostgresCommandLogTest {
  private static JournalFixture on;
  private static CommandLog commands;

  @BeforeAll
  static void open() {
    on = new JournalFixture();
    commands = new PostgresCommandLog(on.transactions, Clock.systemUTC());
  }

  @AfterAll
  static void close() {
    on.close();
  }

  @Test
  @DisplayName("sent twice is done once and answered the same")
  void twice() {
    UUID id = UuidV7.next();
    Answer first = count(id, "twice");
    Answer second = count(id, "twice");
    assertThat(second).isEqualTo(first);
    assertThat(on.journal.load(stream("twice"))).hasSize(1);
  }

  @Test
  @DisplayName("sent eight times at once is done once and answered the same")
  void atOnce() throws Exception {
    UUID id = UuidV7.next();
    try (ExecutorService eight = Executors.newFixedThreadPool(8)) {
      List<Future<Answer>> answers =
          IntStream.range(0, 8).mapToObj(i -> eight.submit(() -> count(id, "at-once"))).toList();
      for (Future<Answer> answer : answers) {
        assertThat(answer.get()).isEqualTo(answers.getFirst().get());
      }
    }
    assertThat(on.journal.load(stream("at-once"))).hasSize(1);
  }

  @Test
  @DisplayName("whose id was used for something else is refused")
  void reused() {
    UUID id = UuidV7.next();
    count(id, "one");
    assertThatThrownBy(() -> count(id, "other")).isInstanceOf(CommandReused.class);
    assertThat(on.journal.load(stream("other"))).isEmpty();
  }

  @Test
  @DisplayName("that was refused leaves nothing and can be sent again")
  void refusedThenDone() {
    UUID id = UuidV7.next();
    assertThatThrownBy(
            () ->
                commands.once(
                    id,
                    "count",
                    Map.of("thing", "later"),
                    () -> {
                      append(id, "later");
                      throw new IllegalArgumentException("not yet");
                    }))
        .hasMessage("not yet");
    assertThat(on.journal.load(stream("later"))).isEmpty();
    assertThat(count(id, "later").status()).isEqualTo(201);
  }

  @Test
  @DisplayName("that meets another on its stream is decided again from the newer state")
  void conflictIsRetried() throws Exception {
    try (ExecutorService many = Executors.newFixedThreadPool(3)) {
      List<Future<Answer>> answers =
          IntStream.range(0, 3)
              .mapToObj(i -> many.submit(() -> count(UuidV7.next(), "busy")))
              .toList();
      for (Future<Answer> answer : answers) {
        assertThat(answer.get().status()).isEqualTo(201);
      }
    }
    assertThat(on.journal.load(stream("busy"))).hasSize(3);
  }

  private static Answer count(UUID id, String thing) {
    return commands.once(
        id, "count", Map.of("thing", thing), () -> Answer.of(201, append(id, thing)));
  }

  private static Counted append(UUID id, String thing) {
    int seen = on.journal.load(stream(thing)).size();
    Counted counted = new Counted(thing, seen);
    on.journal.append(stream(thing), seen, List.of(counted), Cause.command(id));
    return counted;
  }
}
