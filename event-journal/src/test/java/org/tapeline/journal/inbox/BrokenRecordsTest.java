package org.tapeline.journal.inbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.journal.JournalFixture.COUNTED;
import static org.tapeline.journal.JournalFixture.SOON;

import java.nio.charset.StandardCharsets;
import java.sql.PreparedStatement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.apache.kafka.clients.producer.Producer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.header.internals.RecordHeaders;
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
@DisplayName("A record that is no event is parked, and those after it have their effect:")
class BrokenRecordsTest {
  private static final String GOOD = "{\"thing\":\"s\",\"number\":1}";

  private JournalFixture on;
  private Producer<String, byte[]> peer;

  @BeforeEach
  void open() {
    on = new JournalFixture();
    peer = on.running(on.kafka.producer());
    on.execute("create table effect (thing text not null)");
  }

  @AfterEach
  void close() {
    on.close();
  }

  @Test
  @DisplayName("a payload with a NUL, one that is no JSON, one that is no text, none at all")
  void payloads() {
    List<String> payloads =
        List.of(
            "\0",
            "{\"thing\":\"a\0b\"}",
            "{\"thing\":\"a\\u0000b\",\"number\":1}",
            "[",
            "[".repeat(50_000),
            "null",
            "\u00ff",
            "");
    for (int i = 0; i < payloads.size(); i++) {
      send("key", payloads.get(i), headers("count-odd" + i, 1));
    }
    parksThemAndGoesOn(payloads.size());
  }

  @Test
  @DisplayName("a subject with a NUL, none, and one that is longer than an index holds")
  void subjects() {
    List<String> subjects = List.of("count-\0", "", longName());
    subjects.forEach(subject -> send("key", GOOD, headers(subject, 1)));
    parksThemAndGoesOn(subjects.size());
  }

  @Test
  @DisplayName("headers that say no id, type, version or time, and names and keys with a NUL")
  void otherHeaders() {
    Map<String, String> odd =
        Map.of(
            "ce_id", "nobody",
            "ce_type", "org.tapeline.test.counted.v9999999",
            "ce_streamversion", "99999999999999999999",
            "ce_time", "+1000000001-01-01T00:00:00Z",
            "ce_correlationid", "",
            "ce_causationid", "a\0b");
    odd.forEach(
        (name, value) -> {
          RecordHeaders headers = headers("count-" + name, 1);
          headers.remove(name);
          add(headers, name, value);
          add(headers, "odd\0name", "a\0b");
          send("a\0key", GOOD, headers);
        });
    parksThemAndGoesOn(odd.size());
  }

  private void parksThemAndGoesOn(int broken) {
    send("good", "{\"thing\":\"good\",\"number\":1}", headers("count-good", 1));
    on.consumer(
            Subscription.named("test")
                .events(on.topic)
                .on(COUNTED, Counted.class, (counted, event) -> effect(counted)))
        .start();
    await().atMost(SOON).until(() -> texts("select thing from effect").contains("good"));
    await().atMost(SOON).until(() -> texts("select reason from inbox_parked").size() == broken);
    assertThat(texts("select thing from effect")).containsExactly("good");
  }

  private static String longName() {
    StringBuilder name = new StringBuilder("count-");
    // Random, since what repeats itself is stored compressed.
    new Random(1).ints(4_000, 0x4e00, 0x9f00).forEach(name::appendCodePoint);
    return name.toString();
  }

  private void effect(Counted counted) {
    on.transactions.required(
        connection -> {
          try (PreparedStatement insert =
              connection.prepareStatement("insert into effect values (?)")) {
            insert.setString(1, counted.thing());
            return insert.executeUpdate();
          }
        });
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

  private void send(String key, String payload, RecordHeaders headers) {
    byte[] data = payload.getBytes(StandardCharsets.UTF_8);
    peer.send(new ProducerRecord<>(on.topic, 0, key, data, headers));
    peer.flush();
  }

  private static RecordHeaders headers(String subject, int version) {
    RecordHeaders headers = new RecordHeaders();
    add(headers, "ce_id", UUID.randomUUID().toString());
    add(headers, "ce_type", COUNTED);
    add(headers, "ce_time", "2026-01-01T00:00:00Z");
    add(headers, "ce_subject", subject);
    add(headers, "ce_streamversion", Integer.toString(version));
    add(headers, "ce_correlationid", UUID.randomUUID().toString());
    add(headers, "ce_causationid", UUID.randomUUID().toString());
    return headers;
  }

  private static void add(RecordHeaders headers, String name, String value) {
    headers.add(name, value.getBytes(StandardCharsets.UTF_8));
  }
}
