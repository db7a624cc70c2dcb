package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.tapeline.journal.CurrentState;

/**
 * Who the players are. Kept here and, for the peers that need it, on the compacted topic {@code
 * people}; always in the caller's transaction.
 */
@ApplicationScoped
public class People {
  static final String TOPIC = "people";
  static final String PLAYER_DETAILS = "org.tapeline.sizing.player-details.v1";

  private final CurrentState state;
  private final Guardians guardians;

  People(CurrentState state, Guardians guardians) {
    this.state = state;
    this.guardians = guardians;
  }

  /** What the topic says of a player. */
  public record PlayerDetails(
      UUID player,
      String number,
      String givenName,
      String familyName,
      LocalDate birthDate,
      String sex,
      String team,
      String field,
      List<UUID> guardians) {}

  /** True when something changed, of the player or of a guardian. */
  boolean keep(UUID id, RosterLine line) {
    PlayerRow row = PlayerRow.findById(id);
    boolean changed = row == null || !says(row, line);
    if (row == null) {
      row = new PlayerRow();
      row.player = id;
    }
    fill(row, line);
    row.persist();
    changed |= guardians.keep(id, line.guardians());
    state.put(TOPIC, PLAYER_DETAILS, id.toString(), details(row));
    return changed;
  }

  /** Removes everything that says who the player is, here and at the peers. */
  void erase(UUID player) {
    guardians.keep(player, List.of());
    PlayerRow.deleteById(player);
    state.erase(TOPIC, PLAYER_DETAILS, player.toString());
  }

  private static boolean says(PlayerRow row, RosterLine line) {
    return row.givenName.equals(line.givenName())
        && row.familyName.equals(line.familyName())
        && row.birthDate.equals(line.birthDate())
        && Objects.equals(row.sex, line.sex())
        && row.team.equals(line.team())
        && row.field.equals(line.field());
  }

  private static void fill(PlayerRow row, RosterLine line) {
    row.number = line.number();
    row.givenName = line.givenName();
    row.familyName = line.familyName();
    row.birthDate = line.birthDate();
    row.sex = line.sex();
    row.team = line.team();
    row.field = line.field();
  }

  private static PlayerDetails details(PlayerRow row) {
    return new PlayerDetails(
        row.player,
        row.number,
        row.givenName,
        row.familyName,
        row.birthDate,
        row.sex,
        row.team,
        row.field,
        Guardianship.guardiansOf(row.player));
  }
}
