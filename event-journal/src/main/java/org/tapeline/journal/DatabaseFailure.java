package org.tapeline.journal;

import java.sql.SQLException;

/** The database refused or could not be reached. */
public final class DatabaseFailure extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public DatabaseFailure(SQLException cause) {
    super(cause.getMessage(), cause);
  }
}
