package org.tapeline.journal.relay;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.header.internals.RecordHeaders;

/**
 * The journal's unsent rows. Their order is that of the positions among the rows that are visible
 * now: version 2 of a stream gets its position after version 1 was committed, so it can neither be
 * seen without version 1 nor stand before it. A row that commits late is simply sent late; nothing
 * is passed over, since what is due is a list of rows and not a cursor. Each row is looked up by
 * its position: joined in any other way, all of the journal would be walked through for every
 * batch.
 */
final class UnsentEvents implements Unsent {
  private static final String NEXT =
      """
      select position, event_id, stream, version, type, record_key, recorded_at,
             correlation_id, causation_id, data, hash
      from (select position as due from journal_unsent order by position limit ?) unsent
      cross join lateral (select * from journal where position = due limit 1) event
      order by position
      """;

  private final String topic;

  UnsentEvents(String topic) {
    this.topic = topic;
  }

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

  private ProducerRecord<String, byte[]> record(ResultSet row) throws SQLException {
    RecordHeaders headers =
        Headers.of(
            row.getObject(2, UUID.class),
            row.getString(5),
            row.getString(3),
            row.getLong(4),
            row.getObject(7, OffsetDateTime.class).toInstant(),
            row.getObject(8, UUID.class),
            row.getObject(9, UUID.class));
    Headers.add(headers, "ce_journalhash", HexFormat.of().formatHex(row.getBytes(11)));
    byte[] data = row.getString(10).getBytes(StandardCharsets.UTF_8);
    return new ProducerRecord<>(topic, null, row.getString(6), data, headers);
  }

  @Override
  public void sent(Connection connection, List<Entry> entries) throws SQLException {
    try (PreparedStatement delete =
        connection.prepareStatement("delete from journal_unsent where position = any (?)")) {
      Object[] positions = entries.stream().map(Entry::position).toArray();
      delete.setArray(1, connection.createArrayOf("bigint", positions));
      delete.executeUpdate();
    }
  }
}
