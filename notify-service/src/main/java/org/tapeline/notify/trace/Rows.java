package org.tapeline.notify.trace;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;

/**
 * Reads rows for pages and files: many columns of many tables, of which nothing is ever changed.
 */
final class Rows {
  private Rows() {}

  /** Makes one thing of one row. */
  @FunctionalInterface
  interface Reader<T> {
    T read(Row row) throws SQLException;
  }

  /** A row by the names of its columns; what is null comes as {@code null}. */
  record Row(ResultSet result) {
    String text(String column) throws SQLException {
      return result.getString(column);
    }

    int number(String column) throws SQLException {
      return result.getInt(column);
    }

    long large(String column) throws SQLException {
      return result.getLong(column);
    }

    UUID id(String column) throws SQLException {
      return result.getObject(column, UUID.class);
    }

    Instant time(String column) throws SQLException {
      OffsetDateTime time = result.getObject(column, OffsetDateTime.class);
      return time == null ? null : time.toInstant();
    }
  }

  /**
   * @param values for the question marks, in order; no null
   */
  static <T> List<T> of(DataSource database, String sql, List<?> values, Reader<T> reader) {
    try (Connection connection = database.getConnection();
        PreparedStatement select = connection.prepareStatement(sql)) {
      for (int i = 0; i < values.size(); i++) {
        Object value = values.get(i);
        select.setObject(
            i + 1, value instanceof Instant time ? time.atOffset(ZoneOffset.UTC) : value);
      }
      try (ResultSet result = select.executeQuery()) {
        List<T> read = new ArrayList<>();
        while (result.next()) {
          read.add(reader.read(new Row(result)));
        }
        return read;
      }
    } catch (SQLException e) {
      throw new IllegalStateException("Notices cannot be read", e);
    }
  }
}
