package org.tapeline.notify.whole;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;

/** Looks for a text in every column of every table, those of tomorrow too. */
final class EveryColumn {
  private static final String ALL =
      """
      select c.table_name, c.column_name from information_schema.columns c
      join information_schema.tables t using (table_schema, table_name)
      where c.table_schema = 'public' and t.table_type = 'BASE TABLE'
      """;

  private EveryColumn() {}

  /** Where it stands: {@code table.column}; large and small letters are the same. */
  static List<String> holding(DataSource database, String text) {
    try (Connection connection = database.getConnection();
        PreparedStatement columns = connection.prepareStatement(ALL);
        ResultSet column = columns.executeQuery()) {
      List<String> found = new ArrayList<>();
      int looked = 0;
      while (column.next()) {
        looked++;
        String table = column.getString(1);
        String name = column.getString(2);
        if (holds(connection, table, name, text)) {
          found.add(table + "." + name);
        }
      }
      if (looked < 50) {
        throw new IllegalStateException("Only " + looked + " columns were looked at");
      }
      return found;
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private static boolean holds(Connection connection, String table, String column, String text)
      throws SQLException {
    // Bytes as text are their hexadecimal digits, so the text is looked for in that form too.
    String sql =
        """
        select exists (select from "%1$s" where strpos(lower("%2$s"::text), lower(?)) > 0
          or strpos("%2$s"::text, encode(convert_to(?, 'UTF8'), 'hex')) > 0)
        """
            .formatted(table, column);
    try (PreparedStatement look = connection.prepareStatement(sql)) {
      look.setString(1, text);
      look.setString(2, text);
      try (ResultSet result = look.executeQuery()) {
        result.next();
        return result.getBoolean(1);
      }
    }
  }
}
