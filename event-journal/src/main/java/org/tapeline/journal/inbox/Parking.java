package org.tapeline.journal.inbox;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tapeline.journal.EventJson;

/** The table of records that could not be applied and of all that came after them. */
final class Parking {
  private static final String PARK =
      """
      insert into inbox_parked (topic, kafka_partition, kafka_offset, stream, version, type,
        event_id, record_key, headers, payload, reason, detail, tries, parked_at)
      values (?, ?, ?, ?, ?, ?, ?::uuid, ?, ?::jsonb, ?, ?, ?, ?, ?)
      on conflict (topic, stream, version) do nothing
      """;
  private static final String SELECT =
      """
      select topic, kafka_partition, kafka_offset, record_key, headers, payload,
             stream, version, reason, detail, tries, parked_at
      from inbox_parked
      """;

  private Parking() {}

  /**
   * Keeps everybody else away from the stream's parked events until the transaction ends, so that
   * an event is never parked behind one that is being taken out.
   */
  static void lock(Connection connection, String topic, String stream) throws SQLException {
    try (PreparedStatement lock =
        connection.prepareStatement("select pg_advisory_xact_lock(hashtextextended(?, 7))")) {
      lock.setString(1, topic + " " + stream);
      lock.executeQuery().close();
    }
  }

  /** Those of the streams that have parked events. */
  static Set<String> among(Connection connection, Collection<String> streams) throws SQLException {
    Set<String> found = new HashSet<>();
    try (PreparedStatement select =
        connection.prepareStatement(
            "select distinct topic || ' ' || stream from inbox_parked"
                + " where topic || ' ' || stream = any (?)")) {
      select.setArray(1, connection.createArrayOf("text", streams.toArray()));
      try (ResultSet row = select.executeQuery()) {
        while (row.next()) {
          found.add(row.getString(1));
        }
      }
    }
    return found;
  }

  static void park(Connection connection, ParkedRecord parked) throws SQLException {
    Envelope envelope = parked.envelope();
    try (PreparedStatement insert = connection.prepareStatement(PARK)) {
      insert.setString(1, envelope.topic());
      insert.setInt(2, envelope.partition());
      insert.setLong(3, envelope.offset());
      insert.setString(4, parked.stream());
      insert.setLong(5, parked.version());
      insert.setString(6, Storable.text(envelope.headers().get("ce_type")));
      insert.setString(7, parked.eventId());
      insert.setString(8, Storable.text(envelope.key()));
      Map<String, String> headers = Storable.texts(envelope.headers());
      insert.setString(9, EventJson.MAPPER.valueToTree(headers).toString());
      insert.setString(10, Storable.text(envelope.payload()));
      insert.setString(11, parked.reason());
      insert.setString(12, Storable.text(parked.detail()));
      insert.setInt(13, parked.tries());
      insert.setObject(14, parked.at().atOffset(ZoneOffset.UTC));
      insert.executeUpdate();
    }
  }

  /** Every parked record, oldest first. */
  static List<ParkedRecord> all(Connection connection) throws SQLException {
    try (PreparedStatement select = connection.prepareStatement(SELECT + " order by id")) {
      return read(select);
    }
  }

  static List<ParkedRecord> of(Connection connection, String stream) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(SELECT + " where stream = ? order by topic, version")) {
      select.setString(1, stream);
      return read(select);
    }
  }

  static void remove(Connection connection, ParkedRecord parked) throws SQLException {
    try (PreparedStatement delete =
        connection.prepareStatement(
            "delete from inbox_parked where topic = ? and stream = ? and version = ?")) {
      delete.setString(1, parked.envelope().topic());
      delete.setString(2, parked.stream());
      delete.setLong(3, parked.version());
      delete.executeUpdate();
    }
  }

  static void failedAgain(Connection connection, ParkedRecord parked, String detail)
      throws SQLException {
    try (PreparedStatement update =
        connection.prepareStatement(
            "update inbox_parked set tries = tries + 1, reason = 'failed', detail = ?"
                + " where topic = ? and stream = ? and version = ?")) {
      update.setString(1, detail);
      update.setString(2, parked.envelope().topic());
      update.setString(3, parked.stream());
      update.setLong(4, parked.version());
      update.executeUpdate();
    }
  }

  private static List<ParkedRecord> read(PreparedStatement select) throws SQLException {
    List<ParkedRecord> records = new ArrayList<>();
    try (ResultSet row = select.executeQuery()) {
      while (row.next()) {
        Envelope envelope =
            new Envelope(
                row.getString(1),
                row.getInt(2),
                row.getLong(3),
                row.getString(4),
                headers(row.getString(5)),
                row.getString(6));
        Instant at = row.getObject(12, OffsetDateTime.class).toInstant();
        records.add(
            new ParkedRecord(
                envelope,
                row.getString(7),
                row.getLong(8),
                row.getString(9),
                row.getString(10),
                row.getInt(11),
                at));
      }
    }
    return records;
  }

  private static Map<String, String> headers(String json) throws SQLException {
    try {
      return EventJson.MAPPER.readValue(json, new TypeReference<Map<String, String>>() {});
    } catch (JsonProcessingException e) {
      throw new SQLException("Stored headers are not readable", e);
    }
  }
}
