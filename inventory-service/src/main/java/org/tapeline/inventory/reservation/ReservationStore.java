package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.restock.Restock;
import org.tapeline.inventory.restock.RestockWatch.Waits;

/** The reservations as they stand. */
@ApplicationScoped
public class ReservationStore {
  private final Database database;

  ReservationStore(Database database) {
    this.database = database;
  }

  /** Something that is kept for a case. */
  public record Kept(
      UUID id,
      UUID refitCase,
      String needKey,
      UUID player,
      Optional<String> tag,
      Optional<String> item,
      String fromPlace) {

    boolean travelsBy(Restock transfer) {
      return tag.isPresent()
          ? tag.equals(transfer.tag())
          : needKey.equals(transfer.item()) && transfer.fromPlace().equals(Optional.of(fromPlace));
    }
  }

  void insert(UUID id, Cases.Open open, Search.Found found, Instant readyAt, Instant expiresAt) {
    database.change(
        "insert into reservation (id, refit_case, need_key, player, tag, item, from_place,"
            + " to_place, ready_at, expires_at, status, why)"
            + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'live', ?)",
        id,
        open.refitCase(),
        open.need().key(),
        open.player(),
        found.tag().orElse(null),
        found.item().orElse(null),
        found.place(),
        open.field(),
        readyAt,
        expiresAt,
        found.why());
  }

  Optional<Kept> liveOn(String tag) {
    return live("tag = ?", tag).stream().findFirst();
  }

  List<Kept> liveOf(UUID refitCase) {
    return live("refit_case = ?", refitCase);
  }

  List<Kept> expired(Instant now) {
    return live("expires_at < ?", now);
  }

  /** Parts at the place that are kept for others than the player, the first to be ready first. */
  List<Kept> keptForOthers(String place, String item, UUID player) {
    return database.list(
        "select * from reservation where status = 'live'"
            + " and from_place = ? and item = ? and player <> ?"
            + " order by ready_at, id for update",
        ReservationStore::read,
        place,
        item,
        player);
  }

  private List<Kept> live(String which, Object value) {
    return database.list(
        "select * from reservation where status = 'live' and " + which + " order by id for update",
        ReservationStore::read,
        value);
  }

  void end(Kept kept, String status) {
    database.change("update reservation set status = ? where id = ?", status, kept.id());
    kept.tag()
        .ifPresent(
            tag ->
                database.change(
                    "update helmet set reserved_for = null where tag = ? and reserved_for = ?",
                    tag,
                    kept.refitCase()));
  }

  /** Only what travelled is there now: the case may have been given something else meanwhile. */
  void arrived(Waits waits, Restock transfer, Instant now) {
    database.change(
        "update reservation set from_place = ?, ready_at = ?"
            + " where refit_case = ? and need_key = ? and status = 'live'"
            + " and (tag = ? or tag is null and from_place = ?)",
        transfer.place(),
        now,
        waits.refitCase(),
        waits.needKey(),
        transfer.tag().orElse(null),
        transfer.fromPlace().orElseThrow());
  }

  private static Kept read(ResultSet row) throws SQLException {
    return new Kept(
        row.getObject("id", UUID.class),
        row.getObject("refit_case", UUID.class),
        row.getString("need_key"),
        row.getObject("player", UUID.class),
        Optional.ofNullable(row.getString("tag")),
        Optional.ofNullable(row.getString("item")),
        row.getString("from_place"));
  }
}
