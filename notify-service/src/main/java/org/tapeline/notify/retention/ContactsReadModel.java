package org.tapeline.notify.retention;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.contact.GuardianDetails;
import org.tapeline.notify.contact.PlayerDetails;

/** The copies of people, made again and told to nobody. Whose copies were deleted stays away. */
@Singleton
class ContactsReadModel {
  /** Who has left, and whose note of it went when the copies were deleted. */
  private static final String GONE =
      "(select player from player_left except select player from %s.player_left)";

  private static final List<String> TIDY =
      List.of(
          "delete from player where player in " + GONE,
          "delete from guardian g where exists (select from guardianship s where s.guardian ="
              + " g.guardian) and not exists (select from guardianship s where s.guardian ="
              + " g.guardian and s.player not in "
              + GONE
              + ")",
          "delete from guardianship where player in "
              + GONE
              + " or guardian not in (select guardian from guardian)",
          "delete from player_left where player in " + GONE);

  @Produces
  @Singleton
  ReadModel contacts(Contacts contacts, WhenPlayerLeavesThenNoteTheDay leaving) {
    return ReadModel.of(
            "contacts",
            ReadTable.of("guardian"),
            ReadTable.of("guardianship"),
            ReadTable.of("player"),
            ReadTable.of("player_left"))
        .fromPeers(
            copies ->
                leaving
                    .declareOn(copies.latest("people").events("sizing.events"))
                    .on(
                        "org.tapeline.sizing.player-details.v1",
                        PlayerDetails.class,
                        (details, event) -> contacts.keep(details))
                    .on(
                        "org.tapeline.sizing.guardian-details.v1",
                        GuardianDetails.class,
                        (details, event) -> contacts.keep(details))
                    .onErased(
                        "people",
                        "org.tapeline.sizing.player-details",
                        key -> contacts.erasePlayer(UUID.fromString(key)))
                    .onErased(
                        "people",
                        "org.tapeline.sizing.guardian-details",
                        key -> contacts.eraseGuardian(UUID.fromString(key))))
        .atTheEnd(ContactsReadModel::tidy);
  }

  private static void tidy(Connection connection, String live) throws SQLException {
    try (Statement delete = connection.createStatement()) {
      for (String sql : TIDY) {
        delete.executeUpdate(sql.replace("%s", live));
      }
    }
  }
}
