package org.tapeline.journal.store;

import java.sql.Array;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.tapeline.journal.Append;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamConflict;
import org.tapeline.journal.StreamName;

/** Writes rows of the journal, however many, with one statement. */
final class JournalRows {
  private static final String UNIQUE_VIOLATION = "23505";

  // One statement, so that no event can stand in the journal without being due to be sent; in the
  // order of the arrays, so that a stream's positions rise with its versions.
  private static final String INSERT =
      """
      with recorded as (
        insert into journal (event_id, stream, version, type, record_key, recorded_at,
                             correlation_id, causation_id, data, hash)
        select id, stream, version, type, record_key, ?, correlation, causation, data::json, hash
          from unnest(?::uuid[], ?::text[], ?::bigint[], ?::text[], ?::text[], ?::uuid[], ?::uuid[],
                      ?::text[], ?::bytea[]) with ordinality
               as e (id, stream, version, type, record_key, correlation, causation, data, hash, nth)
         order by nth
        returning position, stream, version),
      due as (insert into journal_unsent select position from recorded)
      select position, stream, version from recorded
      """;

  private final EventTypes types;
  private final Instant now;
  private final List<Row> rows = new ArrayList<>();

  /** An event with what its row holds beside it. */
  private record Row(
      UUID id, Append of, long version, String type, String data, byte[] hash, Record event) {}

  /** The last event of a stream. */
  record Tip(long version, byte[] hash) {
    static final Tip NONE = new Tip(0, HashChain.START);
  }

  /**
   * @param now to the microsecond, as PostgreSQL keeps it: the hash must cover what is read back
   */
  JournalRows(EventTypes types, Instant now) {
    this.types = types;
    this.now = now;
  }

  /**
   * The last events of the streams that should have some. One that should be new needs no look: the
   * unique key on stream and version refuses it when it is not.
   */
  static Map<String, Tip> tips(Connection connection, List<Append> appends) throws SQLException {
    Object[] streams =
        appends.stream()
            .filter(append -> append.expectedVersion() > 0)
            .map(append -> append.stream().text())
            .toArray();
    if (streams.length == 0) {
      return Map.of();
    }
    Map<String, Tip> tips = new HashMap<>();
    try (PreparedStatement select =
        connection.prepareStatement(
            """
            select s.stream, j.version, j.hash from unnest(?) as s (stream) cross join lateral
              (select version, hash from journal where stream = s.stream
                order by version desc limit 1) j
            """)) {
      select.setArray(1, connection.createArrayOf("text", streams));
      try (ResultSet row = select.executeQuery()) {
        while (row.next()) {
          tips.put(row.getString(1), new Tip(row.getLong(2), row.getBytes(3)));
        }
      }
    }
    return tips;
  }

  void add(Append append, Tip tip) {
    StreamName stream = append.stream();
    byte[] previous = tip.hash();
    long version = tip.version();
    for (int i = 0; i < append.events().size(); i++) {
      Record event = append.events().get(i);
      String name = append.cause().step() + "/" + stream.text() + "/" + i;
      UUID id = DerivedId.from(append.cause().id(), name);
      String type = types.nameOf(event).text();
      String data = types.write(event);
      version++;
      previous =
          HashChain.next(
              previous,
              id,
              stream.text(),
              version,
              type,
              stream.key(),
              now,
              append.cause().correlationId(),
              append.cause().id(),
              data);
      rows.add(new Row(id, append, version, type, data, previous, event));
    }
  }

  List<RecordedEvent> insert(Connection connection) throws SQLException {
    Map<String, Long> positions = new HashMap<>();
    try (PreparedStatement insert = connection.prepareStatement(INSERT)) {
      insert.setObject(1, now.atOffset(ZoneOffset.UTC));
      insert.setArray(2, array(connection, "uuid", Row::id));
      insert.setArray(3, array(connection, "text", r -> r.of().stream().text()));
      insert.setArray(4, array(connection, "bigint", Row::version));
      insert.setArray(5, array(connection, "text", Row::type));
      insert.setArray(6, array(connection, "text", r -> r.of().stream().key()));
      insert.setArray(7, array(connection, "uuid", r -> r.of().cause().correlationId()));
      insert.setArray(8, array(connection, "uuid", r -> r.of().cause().id()));
      insert.setArray(9, array(connection, "text", Row::data));
      byte[][] hashes = rows.stream().map(Row::hash).toArray(byte[][]::new);
      insert.setArray(10, connection.createArrayOf("bytea", hashes));
      try (ResultSet row = insert.executeQuery()) {
        while (row.next()) {
          positions.put(row.getString(2) + " " + row.getLong(3), row.getLong(1));
        }
      }
    } catch (SQLException e) {
      if (UNIQUE_VIOLATION.equals(e.getSQLState()) && e.getMessage().contains("stream_version")) {
        Append first = rows.getFirst().of();
        throw new StreamConflict(first.stream(), first.expectedVersion(), e);
      }
      throw e;
    }
    return rows.stream()
        .map(r -> recorded(r, positions.get(r.of().stream().text() + " " + r.version())))
        .toList();
  }

  private Array array(Connection connection, String type, Function<Row, Object> column)
      throws SQLException {
    return connection.createArrayOf(type, rows.stream().map(column).toArray());
  }

  private RecordedEvent recorded(Row row, long position) {
    return new RecordedEvent(
        position,
        row.id(),
        row.of().stream().text(),
        row.version(),
        row.type(),
        now,
        row.of().cause().correlationId(),
        row.of().cause().id(),
        row.event());
  }
}
