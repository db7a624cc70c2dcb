package org.tapeline.journal.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamConflict;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.Transactions;

/** The journal in PostgreSQL; the tables come from the migrations under {@code db/journal}. */
public final class PostgresJournal implements Journal {
  private static final String UNIQUE_VIOLATION = "23505";
  private static final String COLUMNS =
      "position, event_id, stream, version, type, recorded_at, correlation_id, causation_id, data";

  // One statement, so that no event can stand in the journal without being due to be sent.
  private static final String APPEND =
      """
      with recorded as (
        insert into journal (event_id, stream, version, type, record_key, recorded_at,
                             correlation_id, causation_id, data, hash)
        values (?, ?, ?, ?, ?, ?, ?, ?, ?::json, ?)
        returning position)
      insert into journal_unsent select position from recorded returning position
      """;

  private final Transactions transactions;
  private final EventTypes types;
  private final Clock clock;
  private final Runnable wakeRelay;

  /**
   * @param wakeRelay called after each commit that appended something
   */
  public PostgresJournal(
      Transactions transactions, EventTypes types, Clock clock, Runnable wakeRelay) {
    this.transactions = transactions;
    this.types = types;
    this.clock = clock;
    this.wakeRelay = wakeRelay;
  }

  @Override
  public List<RecordedEvent> append(
      StreamName stream, long expectedVersion, List<? extends Record> events, Cause cause) {
    if (events.isEmpty()) {
      return List.of();
    }
    return transactions.required(
        connection -> {
          Tip tip = tip(connection, stream);
          if (tip.version != expectedVersion) {
            throw new StreamConflict(stream, expectedVersion, null);
          }
          List<RecordedEvent> recorded = insert(connection, stream, tip, events, cause);
          transactions.afterCommit(wakeRelay);
          return recorded;
        });
  }

  private List<RecordedEvent> insert(
      Connection connection, StreamName stream, Tip tip, List<? extends Record> events, Cause cause)
      throws SQLException {
    List<RecordedEvent> recorded = new ArrayList<>(events.size());
    // PostgreSQL keeps microseconds: the hash must cover what will be read back.
    Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
    byte[] previous = tip.hash;
    try (PreparedStatement append = connection.prepareStatement(APPEND)) {
      for (int i = 0; i < events.size(); i++) {
        Record event = events.get(i);
        long version = tip.version + 1 + i;
        UUID id = DerivedId.from(cause.id(), cause.step() + "/" + stream.text() + "/" + i);
        String type = types.nameOf(event).text();
        String data = types.write(event);
        previous =
            HashChain.next(
                previous,
                id,
                stream.text(),
                version,
                type,
                stream.key(),
                now,
                cause.correlationId(),
                cause.id(),
                data);
        append.setObject(1, id);
        append.setString(2, stream.text());
        append.setLong(3, version);
        append.setString(4, type);
        append.setString(5, stream.key());
        append.setObject(6, now.atOffset(ZoneOffset.UTC));
        append.setObject(7, cause.correlationId());
        append.setObject(8, cause.id());
        append.setString(9, data);
        append.setBytes(10, previous);
        try (ResultSet row = append.executeQuery()) {
          row.next();
          recorded.add(
              new RecordedEvent(
                  row.getLong(1),
                  id,
                  stream.text(),
                  version,
                  type,
                  now,
                  cause.correlationId(),
                  cause.id(),
                  event));
        }
      }
    } catch (SQLException e) {
      if (UNIQUE_VIOLATION.equals(e.getSQLState()) && e.getMessage().contains("stream_version")) {
        throw new StreamConflict(stream, tip.version, e);
      }
      throw e;
    }
    return recorded;
  }

  @Override
  public List<RecordedEvent> load(StreamName stream) {
    return transactions.required(
        connection -> {
          try (PreparedStatement select =
              connection.prepareStatement(
                  "select " + COLUMNS + " from journal where stream = ? order by version")) {
            select.setString(1, stream.text());
            return read(select);
          }
        });
  }

  @Override
  public List<RecordedEvent> loadAfter(long position, int limit) {
    return transactions.required(
        connection -> {
          try (PreparedStatement select =
              connection.prepareStatement(
                  "select "
                      + COLUMNS
                      + " from journal where position > ? order by position limit ?")) {
            select.setLong(1, position);
            select.setInt(2, limit);
            return read(select);
          }
        });
  }

  private List<RecordedEvent> read(PreparedStatement select) throws SQLException {
    List<RecordedEvent> events = new ArrayList<>();
    try (ResultSet row = select.executeQuery()) {
      while (row.next()) {
        String type = row.getString(5);
        events.add(
            new RecordedEvent(
                row.getLong(1),
                row.getObject(2, UUID.class),
                row.getString(3),
                row.getLong(4),
                type,
                row.getObject(6, OffsetDateTime.class).toInstant(),
                row.getObject(7, UUID.class),
                row.getObject(8, UUID.class),
                types.read(type, row.getString(9))));
      }
    }
    return events;
  }

  private static Tip tip(Connection connection, StreamName stream) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "select version, hash from journal where stream = ? order by version desc limit 1")) {
      select.setString(1, stream.text());
      try (ResultSet row = select.executeQuery()) {
        return row.next() ? new Tip(row.getLong(1), row.getBytes(2)) : new Tip(0, HashChain.START);
      }
    }
  }

  /** The last event of a stream. */
  private record Tip(long version, byte[] hash) {}
}
