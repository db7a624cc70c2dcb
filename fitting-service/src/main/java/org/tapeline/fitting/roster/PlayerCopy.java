package org.tapeline.fitting.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.quarkus.http.Problem;

/** The local copy of a player; the name goes when the player is erased. */
@Entity
@Table(name = "player")
public class PlayerCopy extends PanacheEntityBase {
  @Id public UUID player;
  public String number;

  @Column(name = "given_name")
  public String givenName;

  @Column(name = "family_name")
  public String familyName;

  public String team;
  public String field;

  @Column(name = "on_roster")
  public boolean onRoster = true;

  /** When the head was last measured or corrected. */
  @Column(name = "measured_at")
  public Instant measuredAt;

  /** When it was last said that the head should be measured again. */
  @Column(name = "remeasure_due_at")
  public Instant remeasureDueAt;

  public String name() {
    return givenName == null ? "erased" : givenName + " " + familyName;
  }

  /** The row, made when nobody spoke of the player before. */
  static PlayerCopy of(UUID player) {
    return locked(player)
        .orElseGet(
            () -> {
              PlayerCopy row = new PlayerCopy();
              row.player = player;
              row.persistAndFlush();
              return row;
            });
  }

  /**
   * Locked until the transaction ends: what happens to one player happens one after the other, in
   * whichever topic or session it begins.
   */
  public static Optional<PlayerCopy> locked(UUID player) {
    return findByIdOptional(player, LockModeType.PESSIMISTIC_WRITE);
  }

  /** Whether a re-fit of the player can be seen to: known here and on the roster. */
  public boolean playsHere() {
    return onRoster && field != null && team != null;
  }

  public static List<PlayerCopy> onRoster() {
    return list("onRoster = true and team is not null order by team, familyName, givenName");
  }

  public static List<PlayerCopy> onRosterAmong(Collection<UUID> players) {
    return list("onRoster = true and player in ?1 order by familyName, givenName", players);
  }

  public static List<PlayerCopy> among(Collection<UUID> players) {
    return players.isEmpty() ? List.of() : list("player in ?1", players);
  }

  /** Who is fitted at those fields, in the order of the roster. */
  public static List<PlayerCopy> onRosterAt(Collection<String> fields) {
    return fields.isEmpty()
        ? List.of()
        : list(
            "onRoster = true and team is not null and field in ?1"
                + " order by team, familyName, givenName",
            fields);
  }

  /** Who is fitted at that field, whichever team. */
  public static List<PlayerCopy> atField(String field) {
    return list("onRoster = true and field = ?1", field);
  }

  /**
   * By id or roster number, somebody whose field was heard of.
   *
   * @throws Problem when there is nobody like that
   */
  public static PlayerCopy known(String reference) {
    return find(reference == null ? "" : reference.strip())
        .filter(p -> p.field != null)
        .orElseThrow(() -> Problem.notFound("There is no player " + reference + "."));
  }

  /** By id or roster number. */
  public static Optional<PlayerCopy> find(String reference) {
    try {
      return findByIdOptional(UUID.fromString(reference));
    } catch (IllegalArgumentException e) {
      return find("number", reference).firstResultOptional();
    }
  }
}
