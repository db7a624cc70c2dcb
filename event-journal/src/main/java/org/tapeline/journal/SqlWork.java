package org.tapeline.journal;

import java.sql.Connection;
import java.sql.SQLException;

/** Work on a connection that belongs to the running transaction; it must not be closed. */
@FunctionalInterface
public interface SqlWork<T> {
  T run(Connection connection) throws SQLException;
}
