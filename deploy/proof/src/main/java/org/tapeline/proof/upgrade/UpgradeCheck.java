package org.tapeline.proof.upgrade;

import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.consumer.KafkaConsumer;
import org.apache.kafka.common.TopicPartition;
import org.apache.kafka.common.serialization.ByteArrayDeserializer;
import org.apache.kafka.common.serialization.StringDeserializer;

/** Counts what became of the sign-offs, in every service. */
final class UpgradeCheck {
  private static final String SIGNED_OFF = "org.tapeline.fitting.signed-off.v";
  private static final List<String> SERVICES = List.of("sizing", "fitting", "inventory", "notify");
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private final Databases databases;
  private final int kafka;
  private boolean good = true;

  UpgradeCheck(Databases databases, int kafka) {
    this.databases = databases;
    this.kafka = kafka;
  }

  /** True when each of so many sign-offs is there once, everywhere. */
  boolean run(int signOffs) throws SQLException, InterruptedException {
    String issued = "select count(*) from helmet where state = 'issued'";
    String heard = "select count(*) from fit where state = 'signed-off'";
    Instant until = Instant.now().plus(PATIENCE);
    while (Instant.now().isBefore(until)
        && (databases.number("inventory", issued) < signOffs
            || databases.number("notify", heard) < signOffs)) {
      Thread.sleep(250);
    }
    String of = "from journal where type like '" + SIGNED_OFF + "%'";
    for (int version = 1; version <= 3; version++) {
      long written =
          databases.number(
              "fitting",
              "select count(*) from journal where type = '" + SIGNED_OFF + version + "'");
      System.out.printf("   %-52s %6d%n", "signed-off written as v" + version, written);
    }
    expect("sign-offs in the journal", signOffs, "fitting", "select count(*) " + of);
    expect(
        "sessions that were signed off",
        signOffs,
        "fitting",
        "select count(distinct data ->> 'session') " + of);
    expect(
        "players shown as signed off, with the conditions",
        signOffs,
        "fitting",
        "select count(*) from sign_off where state = 'signed-off' and fit_air_celsius = 24");
    expect("sign-offs on the topic, each once", signOffs, onTopic());
    expect("helmets issued", signOffs, "inventory", issued);
    expect(
        "times that a helmet was issued",
        signOffs,
        "inventory",
        "select count(*) from journal where type like '%helmet-issued%'");
    expect(
        "sign-offs on the helmets' time lines",
        signOffs,
        "inventory",
        "select count(*) from helmet_fit where kind = 'signed-off'");
    expect("players whom notify knows as signed off", signOffs, "notify", heard);
    for (String service : SERVICES) {
      expect("parked in " + service, 0, service, "select count(*) from inbox_parked");
      expect("unsent in " + service, 0, service, "select count(*) from journal_unsent");
    }
    return good;
  }

  private void expect(String what, long wanted, String service, String sql) throws SQLException {
    expect(what, wanted, databases.number(service, sql));
  }

  private void expect(String what, long wanted, long found) {
    good &= wanted == found;
    System.out.printf(
        "   %-52s %6d%s%n", what, found, wanted == found ? "" : "   but should be " + wanted);
  }

  /** A relay may have sent one again, which readers know by its version: each id counts once. */
  private int onTopic() {
    Map<String, Object> settings = new HashMap<>();
    settings.put("bootstrap.servers", "127.0.0.1:" + kafka);
    settings.put("group.id", "upgrade-" + UUID.randomUUID());
    Set<String> found = new HashSet<>();
    try (KafkaConsumer<String, byte[]> consumer =
        new KafkaConsumer<>(settings, new StringDeserializer(), new ByteArrayDeserializer())) {
      List<TopicPartition> partitions =
          consumer.partitionsFor("fitting.events").stream()
              .map(p -> new TopicPartition(p.topic(), p.partition()))
              .toList();
      consumer.assign(partitions);
      consumer.seekToBeginning(partitions);
      Map<TopicPartition, Long> ends = consumer.endOffsets(partitions);
      Set<TopicPartition> reading = new HashSet<>(partitions);
      while (!reading.isEmpty()) {
        for (ConsumerRecord<String, byte[]> record : consumer.poll(Duration.ofMillis(200))) {
          if (header(record, "ce_type").startsWith(SIGNED_OFF)) {
            found.add(header(record, "ce_id"));
          }
        }
        reading.removeIf(p -> consumer.position(p) >= ends.get(p));
      }
    }
    return found.size();
  }

  private static String header(ConsumerRecord<String, byte[]> record, String name) {
    return new String(record.headers().lastHeader(name).value(), StandardCharsets.UTF_8);
  }
}
