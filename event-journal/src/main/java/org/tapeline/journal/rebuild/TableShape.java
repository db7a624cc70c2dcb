package org.tapeline.journal.rebuild;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What the database says of a table's columns.
 *
 * @param key the columns of the primary key, in their order
 * @param all every column
 * @param json columns whose type has no equality: their text is compared
 * @param numbered columns that the database numbers itself
 */
record TableShape(List<String> key, List<String> all, Set<String> json, Set<String> numbered) {
  private static final String COLUMNS =
      """
      select a.attname, format_type(a.atttypid, null) = 'json', coalesce(k.nth, 0),
             a.attidentity <> ''
      from pg_attribute a
      left join (select i.indrelid, u.attnum, u.nth from pg_index i,
                   unnest(i.indkey::int2[]) with ordinality as u (attnum, nth)
                  where i.indisprimary) as k
             on k.indrelid = a.attrelid and k.attnum = a.attnum
      where a.attrelid = ?::regclass and a.attnum > 0 and not a.attisdropped
      order by k.nth nulls last, a.attnum
      """;

  static TableShape of(Connection connection, String table) throws SQLException {
    List<String> key = new ArrayList<>();
    List<String> all = new ArrayList<>();
    Set<String> json = new HashSet<>();
    Set<String> numbered = new HashSet<>();
    try (PreparedStatement select = connection.prepareStatement(COLUMNS)) {
      select.setString(1, table);
      try (ResultSet row = select.executeQuery()) {
        while (row.next()) {
          all.add(row.getString(1));
          if (row.getBoolean(2)) {
            json.add(row.getString(1));
          }
          if (row.getBoolean(4)) {
            numbered.add(row.getString(1));
          }
          if (row.getInt(3) > 0) {
            key.add(row.getString(1));
          }
        }
      }
    }
    return new TableShape(
        List.copyOf(key), List.copyOf(all), Set.copyOf(json), Set.copyOf(numbered));
  }
}
