package org.tapeline.journal.verify;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.apache.kafka.clients.consumer.Consumer;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.common.TopicPartition;
import org.apache.kafka.common.header.Header;
import org.tapeline.journal.kafka.KafkaClients;

/** Looks up every record of a service's topic in its journal. */
public final class TopicCheck {
  private static final Duration POLL = Duration.ofSeconds(1);

  private TopicCheck() {}

  /**
   * What was found.
   *
   * @param matching records that stand in the journal with the same hash
   * @param faults one line for each that does not
   */
  public record Report(long matching, List<String> faults) {}

  public static Report run(Connection connection, KafkaClients kafka, String topic)
      throws SQLException {
    long matching = 0;
    List<String> faults = new ArrayList<>();
    try (Consumer<String, byte[]> consumer = kafka.consumer("verify-" + UUID.randomUUID());
        PreparedStatement select =
            connection.prepareStatement(
                "select hash from journal where stream = ? and version = ?")) {
      List<TopicPartition> partitions =
          consumer.partitionsFor(topic).stream()
              .map(p -> new TopicPartition(topic, p.partition()))
              .toList();
      consumer.assign(partitions);
      consumer.seekToBeginning(partitions);
      Map<TopicPartition, Long> ends = consumer.endOffsets(partitions);
      while (!reached(consumer, ends)) {
        for (ConsumerRecord<String, byte[]> record : consumer.poll(POLL)) {
          if (stands(select, record)) {
            matching++;
          } else {
            faults.add(name(record) + " was sent but does not stand in the journal as it was");
          }
        }
      }
    }
    return new Report(matching, faults);
  }

  private static boolean reached(
      Consumer<String, byte[]> consumer, Map<TopicPartition, Long> ends) {
    return ends.entrySet().stream()
        .allMatch(end -> consumer.position(end.getKey()) >= end.getValue());
  }

  private static boolean stands(PreparedStatement select, ConsumerRecord<String, byte[]> record)
      throws SQLException {
    select.setString(1, header(record, "ce_subject"));
    select.setLong(2, Long.parseLong(header(record, "ce_streamversion")));
    try (ResultSet row = select.executeQuery()) {
      return row.next()
          && HexFormat.of().formatHex(row.getBytes(1)).equals(header(record, "ce_journalhash"));
    }
  }

  private static String name(ConsumerRecord<String, byte[]> record) {
    return header(record, "ce_subject") + " version " + header(record, "ce_streamversion");
  }

  /** A record without our headers is nobody's event: stream "", version 0, found nowhere. */
  private static String header(ConsumerRecord<String, byte[]> record, String name) {
    Header header = record.headers().lastHeader(name);
    String missing = name.equals("ce_streamversion") ? "0" : "";
    return header == null ? missing : new String(header.value(), StandardCharsets.UTF_8);
  }
}
