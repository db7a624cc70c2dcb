package org.tapeline.journal.privacy;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Looks at every row of every table of a service's database, but for those that may tell. */
final class TableScan {
  private static final int ROWS_AT_A_TIME = 500;

  private final Connection connection;
  private final String service;

  TableScan(Connection connection, String service) {
    this.connection = connection;
    this.service = service;
  }

  /** All tables, written {@code service.table}. */
  List<String> tables() throws SQLException {
    List<String> tables = new ArrayList<>();
    String select =
        "select tablename from pg_tables where schemaname = current_schema() order by tablename";
    try (PreparedStatement statement = connection.prepareStatement(select);
        ResultSet rows = statement.executeQuery()) {
      while (rows.next()) {
        tables.add(service + "." + rows.getString(1));
      }
    }
    return tables;
  }

  /** The number of rows that were looked at. */
  long run(Set<String> mayTell, PersonalWords words, Findings findings) throws SQLException {
    long looked = 0;
    connection.setAutoCommit(false);
    for (String table : tables()) {
      if (!mayTell.contains(table)) {
        looked += rows(table, words, findings);
      }
    }
    connection.rollback();
    return looked;
  }

  private long rows(String table, PersonalWords words, Findings findings) throws SQLException {
    long looked = 0;
    String name = table.substring(service.length() + 1).replace("\"", "\"\"");
    String select = "select t.ctid::text, t::text from \"" + name + "\" t";
    try (PreparedStatement statement = connection.prepareStatement(select)) {
      statement.setFetchSize(ROWS_AT_A_TIME);
      try (ResultSet rows = statement.executeQuery()) {
        while (rows.next()) {
          looked++;
          findings.at("table " + table + " row " + rows.getString(1), words.in(rows.getString(2)));
        }
      }
    }
    return looked;
  }
}
