package org.tapeline.notify.optout;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** Who turned off what is not about safety, as the streams tell; not of people who were erased. */
@Singleton
class OptOutsReadModel {
  private static final String ERASED =
      """
      delete from opt_out o
      where not exists (select from %1$s.guardian g where g.guardian::text = o.recipient)
        and not exists (select from %1$s.opt_out l where l.recipient = o.recipient)
      """;

  @Produces
  @Singleton
  ReadModel optOuts() {
    return ReadModel.of("opt-outs", ReadTable.of("opt_out"))
        .fromJournal(OptedOut.class, event -> OptOutRow.show((OptedOut) event.data()))
        .fromJournal(OptedIn.class, event -> OptOutRow.show((OptedIn) event.data()))
        .atTheEnd(OptOutsReadModel::tidy);
  }

  private static void tidy(Connection connection, String live) throws SQLException {
    try (Statement delete = connection.createStatement()) {
      delete.executeUpdate(ERASED.formatted(live));
    }
  }
}
