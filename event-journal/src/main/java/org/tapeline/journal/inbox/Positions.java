package org.tapeline.journal.inbox;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription.Mode;

/** How far each stream has been applied. The move forward is itself the test for a repeat. */
final class Positions {
  private static final String FIRST =
      "insert into inbox_position (topic, stream, version) values (?, ?, ?) on conflict do nothing";
  private static final String NEXT =
      "update inbox_position set version = ? where topic = ? and stream = ? and version = ? - 1";
  private static final String NEWER =
      """
      insert into inbox_position as p (topic, stream, version) values (?, ?, ?)
      on conflict (topic, stream) do update set version = excluded.version
      where p.version < excluded.version
      """;

  private Positions() {}

  /** Moves the stream on to this event; false when the event is a repeat or comes too early. */
  static boolean advance(Connection connection, ReceivedEvent event, Mode mode)
      throws SQLException {
    if (mode == Mode.EVERY_VERSION && event.version() > 1) {
      try (PreparedStatement next = connection.prepareStatement(NEXT)) {
        next.setLong(1, event.version());
        next.setString(2, event.topic());
        next.setString(3, event.stream());
        next.setLong(4, event.version());
        return next.executeUpdate() == 1;
      }
    }
    String statement = mode == Mode.LATEST ? NEWER : FIRST;
    try (PreparedStatement first = connection.prepareStatement(statement)) {
      first.setString(1, event.topic());
      first.setString(2, event.stream());
      first.setLong(3, event.version());
      return first.executeUpdate() == 1;
    }
  }

  /** The version that was applied last; 0 for none. */
  static long of(Connection connection, String topic, String stream) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "select version from inbox_position where topic = ? and stream = ?")) {
      select.setString(1, topic);
      select.setString(2, stream);
      try (ResultSet row = select.executeQuery()) {
        return row.next() ? row.getLong(1) : 0;
      }
    }
  }
}
