package org.tapeline.sizing.roster;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;
import org.tapeline.sizing.roster.PlayerEvent.PlayerEnrolled;

/**
 * Who the players are, as it was said to the peers: the only place beside these tables where it
 * stands. An erased person stands in neither.
 */
@Singleton
class PeopleReadModel {
  private static final String PLAYERS =
      """
      insert into player (player, number, given_name, family_name, birth_date, sex, team, field)
      select (data ->> 'player')::uuid, data ->> 'number', data ->> 'givenName',
             data ->> 'familyName', (data ->> 'birthDate')::date, data ->> 'sex', data ->> 'team',
             data ->> 'field'
      from current_state
      where type = 'org.tapeline.sizing.player-details.v1' and data is not null
      """;
  private static final String GUARDIANS =
      """
      insert into guardian (guardian, name, email, phone, language)
      select (data ->> 'guardian')::uuid, data ->> 'name', data ->> 'email', data ->> 'phone',
             data ->> 'language'
      from current_state
      where type = 'org.tapeline.sizing.guardian-details.v1' and data is not null
      """;
  private static final String GUARDIANSHIPS =
      """
      insert into guardianship (player, guardian, place)
      select (data ->> 'player')::uuid, g.guardian::uuid, g.nth - 1
      from current_state,
           json_array_elements_text(data -> 'guardians') with ordinality as g (guardian, nth)
      where type = 'org.tapeline.sizing.player-details.v1' and data is not null
      """;

  @Produces
  @Singleton
  ReadModel players() {
    return ReadModel.of(
            "players",
            ReadTable.of("roster_number"),
            ReadTable.of("player"),
            ReadTable.of("guardian"),
            ReadTable.of("guardianship"))
        .fromJournal(PlayerEnrolled.class, event -> number((PlayerEnrolled) event.data()))
        .atTheEnd((connection, live) -> people(connection));
  }

  private static void number(PlayerEnrolled enrolled) {
    if (RosterNumber.findById(enrolled.number()) == null) {
      RosterNumber row = new RosterNumber();
      row.number = enrolled.number();
      row.player = enrolled.player();
      row.persistAndFlush();
    }
  }

  private static void people(Connection connection) throws SQLException {
    try (Statement insert = connection.createStatement()) {
      insert.executeUpdate(PLAYERS);
      insert.executeUpdate(GUARDIANS);
      insert.executeUpdate(GUARDIANSHIPS);
    }
  }
}
