package org.tapeline.journal.store;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.journal.Append;
import org.tapeline.journal.Cause;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamConflict;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.store.JournalRows.Tip;

/** The journal in PostgreSQL; the tables come from the migrations under {@code db/journal}. */
public final class PostgresJournal implements Journal {
  private static final String COLUMNS =
      "position, event_id, stream, version, type, recorded_at, correlation_id, causation_id, data";

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
    return appendAll(List.of(new Append(stream, expectedVersion, events, cause)));
  }

  @Override
  public List<RecordedEvent> appendAll(List<Append> appends) {
    List<Append> some = appends.stream().filter(a -> !a.events().isEmpty()).toList();
    if (some.isEmpty()) {
      return List.of();
    }
    if (some.stream().map(Append::stream).distinct().count() < some.size()) {
      throw new IllegalArgumentException("A stream is named twice in one append");
    }
    return transactions.required(
        connection -> {
          Map<String, Tip> tips = JournalRows.tips(connection, some);
          // PostgreSQL keeps microseconds: the hash must cover what will be read back.
          Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
          JournalRows rows = new JournalRows(types, now);
          for (Append append : some) {
            Tip tip = tips.getOrDefault(append.stream().text(), Tip.NONE);
            if (tip.version() != append.expectedVersion()) {
              throw new StreamConflict(append.stream(), append.expectedVersion(), null);
            }
            rows.add(append, tip);
          }
          List<RecordedEvent> recorded = rows.insert(connection);
          transactions.afterCommit(wakeRelay);
          return recorded;
        });
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
  public Map<StreamName, List<RecordedEvent>> loadAll(Collection<StreamName> streams) {
    Map<String, StreamName> names =
        streams.stream().distinct().collect(Collectors.toMap(StreamName::text, name -> name));
    return transactions.required(
        connection -> {
          try (PreparedStatement select =
              connection.prepareStatement(
                  "select "
                      + COLUMNS
                      + " from journal where stream = any (?) order by stream, version")) {
            select.setArray(1, connection.createArrayOf("text", names.keySet().toArray()));
            return read(select).stream()
                .collect(Collectors.groupingBy(event -> names.get(event.stream())));
          }
        });
  }

  @Override
  public long version(StreamName stream) {
    return transactions.required(
        connection -> {
          try (PreparedStatement select =
              connection.prepareStatement("select max(version) from journal where stream = ?")) {
            select.setString(1, stream.text());
            try (ResultSet row = select.executeQuery()) {
              return row.next() ? row.getLong(1) : 0;
            }
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
}
