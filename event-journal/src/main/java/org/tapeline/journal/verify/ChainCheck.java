package org.tapeline.journal.verify;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.store.HashChain;

/** Recomputes the hash chain of every stream. */
public final class ChainCheck {
  private static final String ALL =
      """
      select event_id, stream, version, type, record_key, recorded_at,
             correlation_id, causation_id, data, hash
      from journal order by stream, version
      """;

  private ChainCheck() {}

  /**
   * What was found.
   *
   * @param faults one line each, empty when all is sound
   */
  public record Report(long events, long streams, List<String> faults) {}

  public static Report run(Connection connection) throws SQLException {
    connection.setAutoCommit(false);
    Walk walk = new Walk();
    try (Statement select = connection.createStatement()) {
      // A cursor: the journal may be larger than the memory.
      select.setFetchSize(1_000);
      try (ResultSet row = select.executeQuery(ALL)) {
        while (row.next()) {
          walk.visit(row);
        }
      }
    } finally {
      connection.rollback();
      connection.setAutoCommit(true);
    }
    return new Report(walk.events, walk.streams, walk.faults);
  }

  private static final class Walk {
    private final List<String> faults = new ArrayList<>();
    private long events;
    private long streams;
    private String stream = "";
    private long version;
    private byte[] hash = HashChain.START;

    void visit(ResultSet row) throws SQLException {
      if (!row.getString(2).equals(stream)) {
        stream = row.getString(2);
        version = 0;
        hash = HashChain.START;
        streams++;
      }
      events++;
      if (row.getLong(3) != version + 1) {
        faults.add(stream + ": version " + (version + 1) + " is missing");
      }
      if (!Arrays.equals(row.getBytes(10), expected(row))) {
        faults.add(stream + ": version " + row.getLong(3) + " is not what was written");
      }
      version = row.getLong(3);
      hash = row.getBytes(10);
    }

    private byte[] expected(ResultSet row) throws SQLException {
      return HashChain.next(
          hash,
          row.getObject(1, UUID.class),
          row.getString(2),
          row.getLong(3),
          row.getString(4),
          row.getString(5),
          row.getObject(6, OffsetDateTime.class).toInstant(),
          row.getObject(7, UUID.class),
          row.getObject(8, UUID.class),
          row.getString(9));
    }
  }
}
