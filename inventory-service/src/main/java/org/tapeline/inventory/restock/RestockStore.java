package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.restock.Restock.Kind;
import org.tapeline.inventory.restock.Restock.State;
import org.tapeline.inventory.restock.RestockWatch.Waits;
import org.tapeline.journal.quarkus.http.Problem;

/** The requests as they stand. */
@ApplicationScoped
public class RestockStore {
  private final Database database;

  RestockStore(Database database) {
    this.database = database;
  }

  /** Those that are under way, or all of them, the next to come first. */
  public List<Restock> list(boolean all) {
    return database.list(
        "select * from restock"
            + (all ? "" : " where state not in ('received', 'cancelled')")
            + " order by state in ('received', 'cancelled'), expected_at, place, item limit 500",
        RestockStore::read);
  }

  /**
   * @throws Problem when there is none
   */
  Restock known(UUID request) {
    return found(
        database.first("select * from restock where request = ?", RestockStore::read, request),
        request);
  }

  /** The same, and it cannot change until the transaction ends. */
  Restock locked(UUID request) {
    return found(
        database.first(
            "select * from restock where request = ? for update", RestockStore::read, request),
        request);
  }

  private static Restock found(Optional<Restock> restock, UUID request) {
    return restock.orElseThrow(
        () -> Problem.notFound("There is no restock request " + request + "."));
  }

  /** The request into which another cause can be merged. */
  Optional<Restock> mergeable(String place, String item) {
    return database.first(
        "select * from restock where kind = 'restock' and state = 'requested'"
            + " and place = ? and item = ? for update",
        RestockStore::read,
        place,
        item);
  }

  /** The transfer for the shelf into which more can be merged. */
  Optional<Restock> mergeableTransfer(String place, String fromPlace, String item) {
    return database.first(
        "select * from restock where kind = 'transfer' and state = 'requested' and for_stock > 0"
            + " and place = ? and from_place = ? and item = ? for update",
        RestockStore::read,
        place,
        fromPlace,
        item);
  }

  /** What was picked or sent from outside for the case. */
  Optional<Restock> comingFor(Waits cause) {
    return database.first(
        "select r.* from restock r join restock_cause c on c.request = r.request"
            + " where c.refit_case = ? and c.need_key = ? and r.kind = 'restock'"
            + " and r.state in ('picked', 'shipped') order by r.expected_at",
        RestockStore::read,
        cause.refitCase(),
        cause.needKey());
  }

  /** The transfer that brings that helmet to that place. */
  Optional<Restock> travelling(String tag, String place) {
    return database.first(
        "select * from restock where kind = 'transfer' and tag = ? and place = ?"
            + " and state in ('requested', 'picked', 'shipped') order by request for update",
        RestockStore::read,
        tag,
        place);
  }

  List<Restock> requestedFor(UUID refitCase, String needKey) {
    return database.list(
        "select r.* from restock r join restock_cause c on c.request = r.request"
            + " where c.refit_case = ? and c.need_key = ? and r.state = 'requested'"
            + " for update of r",
        RestockStore::read,
        refitCase,
        needKey);
  }

  List<Waits> causes(UUID request) {
    return database.list(
        "select refit_case, need_key from restock_cause where request = ? order by refit_case",
        row -> new Waits(row.getObject(1, UUID.class), row.getString(2)),
        request);
  }

  int countCauses(UUID request) {
    return database
        .first(
            "select count(*) from restock_cause where request = ?", row -> row.getInt(1), request)
        .orElse(0);
  }

  /** Cases that wait for it, some of them when they are many. */
  List<UUID> someCases(UUID request, int atMost) {
    return database.list(
        "select distinct refit_case from restock_cause where request = ?"
            + " order by refit_case limit ?",
        row -> row.getObject(1, UUID.class),
        request,
        atMost);
  }

  /** Whether the cause is new. */
  boolean addCause(UUID request, Waits cause) {
    return database.change(
            "insert into restock_cause values (?, ?, ?) on conflict do nothing",
            request,
            cause.refitCase(),
            cause.needKey())
        == 1;
  }

  void removeCause(UUID request, Waits cause) {
    database.change(
        "delete from restock_cause where request = ? and refit_case = ? and need_key = ?",
        request,
        cause.refitCase(),
        cause.needKey());
  }

  void save(Restock r, Instant at) {
    database.change(
        """
        insert into restock (request, kind, place, from_place, item, model, size, tag, quantity,
            for_stock, state, expected_at, changed_at, requested_at)
          values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
          on conflict (request) do update
          set quantity = excluded.quantity, for_stock = excluded.for_stock, state = excluded.state,
              expected_at = excluded.expected_at, changed_at = excluded.changed_at,
              sent_at = coalesce(restock.sent_at,
                case when excluded.state in ('picked', 'shipped') then excluded.changed_at end),
              received_at = coalesce(restock.received_at,
                case when excluded.state = 'received' then excluded.changed_at end)
        """,
        r.request(),
        r.kind().code(),
        r.place(),
        r.fromPlace().orElse(null),
        r.item(),
        r.model().orElse(null),
        r.size().orElse(null),
        r.tag().orElse(null),
        r.quantity(),
        r.forStock(),
        r.state().code(),
        r.expectedAt(),
        at,
        at);
  }

  void came(UUID request, Receipt.Came came) {
    database.change(
        "update restock set came = ?, damaged = ? where request = ?",
        came.good(),
        came.damaged(),
        request);
  }

  /** It is no longer on a pick list. */
  void untaken(UUID request) {
    database.change("delete from restock_taken where request = ?", request);
  }

  private static Restock read(ResultSet row) throws SQLException {
    return new Restock(
        row.getObject("request", UUID.class),
        Kind.valueOf(row.getString("kind").toUpperCase(Locale.ROOT)),
        row.getString("place"),
        Optional.ofNullable(row.getString("from_place")),
        row.getString("item"),
        Optional.ofNullable(row.getString("model")),
        Optional.ofNullable(row.getString("size")),
        Optional.ofNullable(row.getString("tag")),
        row.getInt("quantity"),
        row.getInt("for_stock"),
        State.valueOf(row.getString("state").toUpperCase(Locale.ROOT)),
        Database.instant(row, "expected_at"));
  }
}
