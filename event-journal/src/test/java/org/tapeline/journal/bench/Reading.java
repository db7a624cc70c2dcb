package org.tapeline.journal.bench;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.tapeline.journal.RecordedEvent;

/** The whole journal read again, as a rebuild does, and read as bare rows. */
final class Reading {
  private static final int BATCH = 1_000;

  private final BenchJournal bench;

  Reading(BenchJournal bench) {
    this.bench = bench;
  }

  double replay() {
    long start = System.nanoTime();
    long events = 0;
    long position = 0;
    List<RecordedEvent> some = bench.journal.loadAfter(position, BATCH);
    while (!some.isEmpty()) {
      events += some.size();
      position = some.getLast().position();
      some = bench.journal.loadAfter(position, BATCH);
    }
    return Rate.of(events, start);
  }

  double rawRows() throws SQLException {
    long start = System.nanoTime();
    long rows = 0;
    try (Connection connection = bench.connections.getConnection()) {
      connection.setAutoCommit(false);
      try (PreparedStatement select =
          connection.prepareStatement("select stream, version, data from journal")) {
        select.setFetchSize(BATCH);
        try (ResultSet row = select.executeQuery()) {
          while (row.next()) {
            row.getString(3);
            rows++;
          }
        }
      }
      connection.commit();
    }
    return Rate.of(rows, start);
  }
}
