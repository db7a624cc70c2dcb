package org.tapeline.journal.relay;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.header.internals.RecordHeaders;
import org.tapeline.journal.EventTypeName;

/** Values of compacted topics that changed since they were sent; an erased one is a tombstone. */
final class UnsentState implements Unsent {
  private static final String NEXT =
      """
      select revision, topic, type, record_key, data, event_id, changed_at
      from current_state where unsent order by changed_at, revision limit ?
      """;

  @Override
  public List<Entry> next(Connection connection, int limit) throws SQLException {
    List<Entry> entries = new ArrayList<>();
    try (PreparedStatement select = connection.prepareStatement(NEXT)) {
      select.setInt(1, limit);
      try (ResultSet row = select.executeQuery()) {
        while (row.next()) {
          entries.add(new Entry(row.getLong(1), record(row)));
        }
      }
    }
    return entries;
  }

  private static ProducerRecord<String, byte[]> record(ResultSet row) throws SQLException {
    String type = row.getString(3);
    String key = row.getString(4);
    String data = row.getString(5);
    UUID id = row.getObject(6, UUID.class);
    RecordHeaders headers =
        Headers.of(
            id,
            type,
            EventTypeName.parse(type).event() + "-" + key,
            row.getLong(1),
            row.getObject(7, OffsetDateTime.class).toInstant(),
            id,
            id);
    byte[] value = data == null ? null : data.getBytes(StandardCharsets.UTF_8);
    return new ProducerRecord<>(row.getString(2), null, key, value, headers);
  }

  /** A value that changed again meanwhile has a newer revision and stays due. */
  @Override
  public void sent(Connection connection, List<Entry> entries) throws SQLException {
    Object[] revisions = entries.stream().map(Entry::position).toArray();
    for (String statement :
        List.of(
            "delete from current_state where data is null and revision = any (?)",
            "update current_state set unsent = false where revision = any (?)")) {
      try (PreparedStatement sent = connection.prepareStatement(statement)) {
        sent.setArray(1, connection.createArrayOf("bigint", revisions));
        sent.executeUpdate();
      }
    }
  }
}
