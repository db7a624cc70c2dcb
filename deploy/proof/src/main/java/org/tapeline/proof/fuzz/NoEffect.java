package org.tapeline.proof.fuzz;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.tapeline.servers.LocalPostgres;

/**
 * Looks in the journals for what refused commands led to. Every event carries the id of the command
 * that it goes back to, so that nothing needs to stand still for that.
 */
final class NoEffect {
  private final int port;

  /**
   * @param port of the stack's PostgreSQL
   */
  NoEffect(int port) {
    this.port = port;
  }

  /** Service and event of everything that goes back to one of the commands. */
  List<String> of(Collection<UUID> refused) throws SQLException {
    List<String> found = new ArrayList<>();
    for (String service : Target.SERVICES) {
      String url = "jdbc:postgresql://127.0.0.1:" + port + "/" + service;
      try (Connection connection =
              DriverManager.getConnection(url, LocalPostgres.USER, LocalPostgres.PASSWORD);
          PreparedStatement select =
              connection.prepareStatement(
                  "select correlation_id, type from journal where correlation_id = any (?)")) {
        select.setArray(1, connection.createArrayOf("uuid", refused.toArray()));
        try (ResultSet row = select.executeQuery()) {
          while (row.next()) {
            found.add(service + " " + row.getString(2) + " of command " + row.getString(1));
          }
        }
      }
    }
    return found;
  }
}
