package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.tapeline.journal.CurrentState;
import org.tapeline.journal.UuidV7;
import org.tapeline.sizing.roster.RosterLine.GuardianLine;

/**
 * Who the players and guardians are. Kept here and, for the peers that need it, on the compacted
 * topic {@code people}; always in the caller's transaction.
 */
@ApplicationScoped
public class People {
  static final String TOPIC = "people";
  static final String PLAYER_DETAILS = "org.tapeline.sizing.player-details.v1";
  static final String GUARDIAN_DETAILS = "org.tapeline.sizing.guardian-details.v1";

  private final CurrentState state;

  People(CurrentState state) {
    this.state = state;
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

  /** What the topic says of a guardian. */
  public record GuardianDetails(
      UUID guardian,
      String name,
      String email,
      String phone,
      String language,
      List<UUID> players) {}

  /** True when something changed. */
  boolean keep(UUID id, RosterLine line) {
    PlayerRow row = PlayerRow.findById(id);
    boolean isNew = row == null;
    boolean changed = isNew || !says(row, line);
    if (isNew) {
      row = new PlayerRow();
      row.player = id;
    }
    fill(row, line);
    row.persist();
    List<UUID> before = Guardianship.guardiansOf(id);
    List<UUID> now = line.guardians().stream().map(this::keepGuardian).distinct().toList();
    changed |= setGuardians(id, before, now);
    state.put(TOPIC, PLAYER_DETAILS, id.toString(), details(row, now));
    Set<UUID> touched = new HashSet<>(before);
    touched.addAll(now);
    touched.forEach(this::tellOfGuardian);
    return changed;
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

  private UUID keepGuardian(GuardianLine line) {
    GuardianRow row =
        GuardianRow.known(line.name(), line.email(), line.phone())
            .orElseGet(
                () -> {
                  GuardianRow fresh = new GuardianRow();
                  fresh.guardian = UuidV7.next();
                  return fresh;
                });
    row.name = line.name();
    row.email = line.email();
    row.phone = line.phone();
    row.language = line.language();
    row.persist();
    return row.guardian;
  }

  private static boolean setGuardians(UUID player, List<UUID> before, List<UUID> now) {
    if (before.equals(now)) {
      return false;
    }
    Guardianship.delete("player", player);
    Guardianship.getEntityManager().flush();
    for (int place = 0; place < now.size(); place++) {
      Guardianship link = new Guardianship();
      link.player = player;
      link.guardian = now.get(place);
      link.place = place;
      link.persist();
    }
    return true;
  }

  /** A guardian who stands for nobody any more is forgotten. */
  private void tellOfGuardian(UUID id) {
    List<UUID> players = Guardianship.playersOf(id);
    GuardianRow row = GuardianRow.findById(id);
    if (players.isEmpty()) {
      state.erase(TOPIC, GUARDIAN_DETAILS, id.toString());
      GuardianRow.deleteById(id);
    } else {
      state.put(
          TOPIC,
          GUARDIAN_DETAILS,
          id.toString(),
          new GuardianDetails(id, row.name, row.email, row.phone, row.language, players));
    }
  }

  private static PlayerDetails details(PlayerRow row, List<UUID> guardians) {
    return new PlayerDetails(
        row.player,
        row.number,
        row.givenName,
        row.familyName,
        row.birthDate,
        row.sex,
        row.team,
        row.field,
        guardians);
  }

  /** Removes everything that says who the player is, here and at the peers. */
  void erase(UUID player) {
    List<UUID> guardians = Guardianship.guardiansOf(player);
    Guardianship.delete("player", player);
    PlayerRow.deleteById(player);
    state.erase(TOPIC, PLAYER_DETAILS, player.toString());
    guardians.forEach(this::tellOfGuardian);
  }
}
