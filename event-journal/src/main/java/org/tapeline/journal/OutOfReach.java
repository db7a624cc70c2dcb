package org.tapeline.journal;

import java.sql.SQLException;
import java.util.regex.Pattern;

/**
 * Tells a database that cannot work just now from a record, or a command, that cannot be applied.
 * Only the second says something about the record.
 */
public final class OutOfReach {
  /**
   * Classes of PostgreSQL's error codes (its manual, appendix A): the connection broke, resources
   * are missing such as room on the disk, the server is being stopped or started, the system
   * failed.
   */
  private static final Pattern CODES = Pattern.compile("(08|53|57|58)...");

  /** The pool has waited in vain for a connection; it gives no code. */
  private static final String NO_CONNECTION = "acquisition timeout";

  private OutOfReach() {}

  /** Whether the database was away, whatever the failure is wrapped in. */
  public static boolean is(Throwable why) {
    for (Throwable t = why; t != null; t = t.getCause()) {
      if (t instanceof SQLException sql && away(sql)) {
        return true;
      }
    }
    return false;
  }

  private static boolean away(SQLException e) {
    return e.getSQLState() == null
        ? String.valueOf(e.getMessage()).contains(NO_CONNECTION)
        : CODES.matcher(e.getSQLState()).matches();
  }
}
