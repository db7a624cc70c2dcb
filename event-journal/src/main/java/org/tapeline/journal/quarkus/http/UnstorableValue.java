package org.tapeline.journal.quarkus.http;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.tapeline.journal.NotText;

/**
 * Values that no column holds: a character that is none (NUL), a number or a day beyond all
 * measure. The database undid the transaction, so that nothing came of it.
 */
final class UnstorableValue {
  /** What PostgreSQL calls "data exception" (its manual, appendix A). */
  private static final String DATA_EXCEPTION = "22";

  private UnstorableValue() {}

  static Optional<Problem> of(Throwable e) {
    for (Throwable t = e; t != null; t = t.getCause()) {
      boolean data =
          t instanceof SQLException sql
              && String.valueOf(sql.getSQLState()).startsWith(DATA_EXCEPTION);
      if (data || t instanceof NotText) {
        return Optional.of(
            new Problem(
                400,
                "not-storable",
                "Not understood",
                "Something in it has a character, a number or a day that cannot be kept."
                    + " Type it again.",
                List.of()));
      }
    }
    return Optional.empty();
  }
}
