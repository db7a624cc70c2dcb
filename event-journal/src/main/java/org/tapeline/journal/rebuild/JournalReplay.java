package org.tapeline.journal.rebuild;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.Transactions;

/**
 * Shows the journal's events again, in the order of their positions. A writer may commit a position
 * below one that was read already: every gap is remembered and looked at again, in the statement
 * that reads on, so that no event is shown before the one that its stream has before it.
 */
final class JournalReplay {
  static final int BATCH = 1_000;

  private static final String COLUMNS =
      """
      position, event_id, stream, version, type, recorded_at, correlation_id, causation_id,
      case when type = any (?) then data end
      """;
  private static final String NEXT =
      "select * from (select "
          + COLUMNS
          + " from journal where position > ? order by position limit ?) as after"
          + " union all select "
          + COLUMNS
          + " from journal join unnest(?::bigint[], ?::bigint[]) as gap (first, last)"
          + " on position between gap.first and gap.last order by position";

  private final EventTypes types;
  private final Transactions transactions;
  private final List<ReadModel> models;
  private final Set<String> wanted = new TreeSet<>();
  private Mark at = new Mark(0, List.of(), 0);

  private record Gap(long first, long last) {}

  /** How far it has come. */
  record Mark(long position, List<Gap> gaps, long done) {}

  JournalReplay(EventTypes types, Transactions transactions, List<ReadModel> models) {
    this.types = types;
    this.transactions = transactions;
    this.models = models;
    models.forEach(model -> model.events().forEach(e -> wanted.addAll(types.namesOf(e))));
  }

  long total(Connection connection) throws SQLException {
    if (wanted.isEmpty()) {
      return 0;
    }
    try (PreparedStatement count = connection.prepareStatement("select count(*) from journal");
        ResultSet row = count.executeQuery()) {
      row.next();
      return row.getLong(1);
    }
  }

  long done() {
    return at.done();
  }

  Mark mark() {
    return at;
  }

  void goBackTo(Mark mark) {
    at = mark;
  }

  /** Shows a batch; false when that was all. */
  boolean next(Connection connection) throws SQLException {
    if (wanted.isEmpty()) {
      return false;
    }
    List<RecordedEvent> events = new ArrayList<>();
    List<Long> late = new ArrayList<>();
    List<Gap> gaps = new ArrayList<>();
    long last = at.position();
    int read = 0;
    try (PreparedStatement select = connection.prepareStatement(NEXT)) {
      bind(connection, select);
      try (ResultSet row = select.executeQuery()) {
        while (row.next()) {
          long position = row.getLong(1);
          if (position > at.position()) {
            if (position > last + 1) {
              gaps.add(new Gap(last + 1, position - 1));
            }
            last = position;
            read++;
          } else {
            late.add(position);
          }
          if (row.getString(9) != null) {
            events.add(event(row));
          }
        }
      }
    }
    for (RecordedEvent event : events) {
      models.forEach(model -> model.show(event));
      transactions.settle();
    }
    List<Gap> open = new ArrayList<>(without(at.gaps(), late));
    open.addAll(gaps);
    at = new Mark(last, List.copyOf(open), at.done() + read + late.size());
    return read == BATCH;
  }

  private void bind(Connection connection, PreparedStatement select) throws SQLException {
    Object[] names = wanted.toArray();
    select.setArray(1, connection.createArrayOf("text", names));
    select.setLong(2, at.position());
    select.setInt(3, BATCH);
    select.setArray(4, connection.createArrayOf("text", names));
    Object[] first = at.gaps().stream().map(Gap::first).toArray();
    Object[] last = at.gaps().stream().map(Gap::last).toArray();
    select.setArray(5, connection.createArrayOf("bigint", first));
    select.setArray(6, connection.createArrayOf("bigint", last));
  }

  private static List<Gap> without(List<Gap> gaps, List<Long> filled) {
    List<Gap> left = gaps;
    for (long position : filled) {
      List<Gap> next = new ArrayList<>();
      for (Gap gap : left) {
        if (position < gap.first() || position > gap.last()) {
          next.add(gap);
          continue;
        }
        if (gap.first() < position) {
          next.add(new Gap(gap.first(), position - 1));
        }
        if (position < gap.last()) {
          next.add(new Gap(position + 1, gap.last()));
        }
      }
      left = next;
    }
    return left;
  }

  private RecordedEvent event(ResultSet row) throws SQLException {
    String type = row.getString(5);
    return new RecordedEvent(
        row.getLong(1),
        row.getObject(2, UUID.class),
        row.getString(3),
        row.getLong(4),
        type,
        row.getObject(6, OffsetDateTime.class).toInstant(),
        row.getObject(7, UUID.class),
        row.getObject(8, UUID.class),
        types.read(type, row.getString(9)));
  }
}
