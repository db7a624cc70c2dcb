package org.tapeline.journal.rebuild;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Whether every table of a database is either rebuilt or kept, for a reason that is written down.
 */
public final class TableClasses {
  private static final String TABLES =
      "select relname from pg_class where relkind = 'r' and relnamespace ="
          + " (select oid from pg_namespace where nspname = current_schema())";

  private TableClasses() {}

  /** One sentence for each table that is in no class, in two, or not there. */
  public static List<String> faults(Connection connection, List<ReadModel> models, Kept kept)
      throws SQLException {
    Map<String, Integer> classes = new TreeMap<>();
    kept.tables().keySet().forEach(table -> classes.merge(table, 1, Integer::sum));
    models.forEach(m -> m.tables().forEach(t -> classes.merge(t.name(), 1, Integer::sum)));
    Set<String> there = there(connection);
    List<String> faults = new ArrayList<>();
    for (String table : there) {
      int times = classes.getOrDefault(table, 0);
      if (times != 1) {
        faults.add(table + (times == 0 ? " is neither rebuilt nor kept" : " is named twice"));
      }
    }
    classes.keySet().stream()
        .filter(table -> !there.contains(table))
        .forEach(table -> faults.add(table + " is not there"));
    return faults;
  }

  private static Set<String> there(Connection connection) throws SQLException {
    Set<String> tables = new TreeSet<>();
    try (Statement select = connection.createStatement();
        ResultSet row = select.executeQuery(TABLES)) {
      while (row.next()) {
        tables.add(row.getString(1));
      }
    }
    return tables;
  }
}
