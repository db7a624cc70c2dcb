package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.Receiving.Progress;
import org.tapeline.inventory.helmet.Receiving.Summary;
import org.tapeline.inventory.helmet.Receiving.Taken;
import org.tapeline.journal.quarkus.http.Problem;

/** The deliveries that are taken in by scanning, and what is in of each. */
@ApplicationScoped
public class Receivings {
  private static final int SHOWN = 200;

  private final Database database;

  Receivings(Database database) {
    this.database = database;
  }

  void add(Receiving r) {
    Delivery d = r.delivery();
    database.change(
        "insert into receiving (receiving, model, size, lot, manufactured_on, certified_until,"
            + " place, opened_at, opened_by) values (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        r.id(),
        d.model(),
        d.size(),
        d.lot(),
        d.manufacturedOn(),
        d.certifiedUntil().orElse(null),
        d.place(),
        r.openedAt(),
        r.openedBy());
  }

  void keep(UUID receiving, String tag, String how, Instant at) {
    database.change(
        "insert into received_helmet (tag, receiving, how, at) values (?, ?, ?, ?)",
        tag,
        receiving,
        how,
        at);
  }

  /**
   * @throws Problem 404 when there is none
   */
  Receiving find(UUID id) {
    return database
        .first("select * from receiving where receiving = ?", Receivings::read, id)
        .orElseThrow(() -> Problem.notFound("There is no such delivery. Begin it again."));
  }

  /**
   * @throws Problem 409 that says which one of the delivery it is already
   */
  void notTwice(UUID receiving, String tag) {
    database
        .first(
            "select (select count(*) from received_helmet o where o.receiving = r.receiving"
                + " and o.number <= r.number) from received_helmet r"
                + " where r.receiving = ? and r.tag = ?",
            row -> row.getInt(1),
            receiving,
            tag)
        .ifPresent(
            n -> {
              throw Problem.conflict(
                  "taken-in-already",
                  tag + " is taken in already, as number " + n + " of this delivery.");
            });
  }

  Progress progress(UUID id) {
    Receiving receiving = find(id);
    int count =
        database
            .first(
                "select count(*) from received_helmet where receiving = ?",
                row -> row.getInt(1),
                id)
            .orElse(0);
    List<Taken> latest =
        database.list(
            "select tag, how from received_helmet where receiving = ? order by number desc limit "
                + SHOWN,
            row -> new Taken(row.getString(1), row.getString(2)),
            id);
    return new Progress(receiving, latest, count);
  }

  /** The newest first. */
  List<Summary> last(int most) {
    return database.list(
        "select r.*, (select count(*) from received_helmet h where h.receiving = r.receiving) as n"
            + " from receiving r order by opened_at desc limit "
            + most,
        row ->
            new Summary(
                row.getObject("receiving", UUID.class),
                row.getString("model"),
                row.getString("size"),
                row.getString("lot"),
                row.getString("place"),
                row.getInt("n")));
  }

  /** Tags that were ordered or reserved and not taken in yet, out of these; at most five. */
  List<String> expected(List<String> tags) {
    return database.list(
        """
        select tag from helmet where state = 'ordered' and tag = any (string_to_array(?, ','))
        union
        select t.tag from reserved_tag t left join helmet h on h.tag = t.tag
         where h.tag is null and t.tag = any (string_to_array(?, ',')) order by 1 limit 5
        """,
        row -> row.getString(1),
        String.join(",", tags),
        String.join(",", tags));
  }

  private static Receiving read(ResultSet row) throws SQLException {
    return new Receiving(
        row.getObject("receiving", UUID.class),
        new Delivery(
            row.getString("model"),
            row.getString("size"),
            row.getString("lot"),
            row.getObject("manufactured_on", LocalDate.class),
            Optional.ofNullable(row.getObject("certified_until", LocalDate.class)),
            row.getString("place")),
        Database.instant(row, "opened_at"),
        row.getString("opened_by"));
  }
}
