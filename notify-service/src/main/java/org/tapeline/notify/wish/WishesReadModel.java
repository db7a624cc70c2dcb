package org.tapeline.notify.wish;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** How people want to be written to, as the streams tell; not of people who were erased. */
@Singleton
class WishesReadModel {
  private static final String ERASED =
      """
      delete from wish w
      where not exists (select from %1$s.guardian g where g.guardian::text = w.recipient)
        and not exists (select from %1$s.wish l where l.recipient = w.recipient)
      """;

  @Produces
  @Singleton
  ReadModel wishes() {
    return ReadModel.of("wishes", ReadTable.of("wish"))
        .fromJournal(
            WishesSet.class, event -> WishRow.show((WishesSet) event.data(), event.version()))
        .atTheEnd(WishesReadModel::tidy);
  }

  private static void tidy(Connection connection, String live) throws SQLException {
    try (Statement delete = connection.createStatement()) {
      delete.executeUpdate(ERASED.formatted(live));
    }
  }
}
