package org.tapeline.proof.upgrade;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** The services' databases in the local stack, to look at. */
record Databases(int port) {
  private static final String USER = "tapeline";

  /** The first column of what was asked. */
  List<String> texts(String service, String sql) throws SQLException {
    String url = "jdbc:postgresql://127.0.0.1:" + port + "/" + service;
    List<String> all = new ArrayList<>();
    try (Connection connection = DriverManager.getConnection(url, USER, USER);
        Statement select = connection.createStatement();
        ResultSet row = select.executeQuery(sql)) {
      while (row.next()) {
        all.add(row.getString(1));
      }
    }
    return all;
  }

  long number(String service, String sql) throws SQLException {
    return Long.parseLong(texts(service, sql).getFirst());
  }
}
