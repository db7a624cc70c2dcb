package org.tapeline.inventory.place;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.place.PlaceListed.Way;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;

/** The fields and depots. */
@ApplicationScoped
public class Places {
  private final Database database;
  private final Journal journal;

  Places(Database database, Journal journal) {
    this.database = database;
    this.journal = journal;
  }

  /** A place without its ways. */
  public record Place(String code, String name, String kind, BigDecimal altitudeM, String zone) {
    boolean same(Place other) {
      return code.equals(other.code)
          && name.equals(other.name)
          && kind.equals(other.kind)
          && altitudeM.compareTo(other.altitudeM) == 0
          && zone.equals(other.zone);
    }
  }

  public List<Place> all() {
    return database.list("select * from place order by kind desc, name", Places::read);
  }

  public Optional<Place> find(String code) {
    return database.first("select * from place where code = ?", Places::read, code);
  }

  public boolean exists(String code) {
    return find(code).isPresent();
  }

  /** The place's time zone; UTC for a place that is not known. */
  public ZoneId zone(String code) {
    return find(code).map(p -> ZoneId.of(p.zone())).orElse(ZoneOffset.UTC);
  }

  /** The time zone of the first depot, else of the first place: that of the people at a desk. */
  public ZoneId officeZone() {
    return all().stream()
        .sorted(Comparator.comparing((Place p) -> p.kind().equals("field")))
        .findFirst()
        .map(p -> ZoneId.of(p.zone()))
        .orElse(ZoneOffset.UTC);
  }

  /** Whether it changed anything. */
  boolean keep(Place place) {
    if (find(place.code()).filter(place::same).isPresent()) {
      return false;
    }
    database.change(
        "insert into place (code, name, kind, altitude_m, zone) values (?, ?, ?, ?, ?)"
            + " on conflict (code) do update set name = excluded.name, kind = excluded.kind,"
            + " altitude_m = excluded.altitude_m, zone = excluded.zone",
        place.code(),
        place.name(),
        place.kind(),
        place.altitudeM(),
        place.zone());
    return true;
  }

  /** Whether it changed anything. */
  boolean keepWay(String from, String to, int minutes) {
    return database.change(
            "insert into travel (from_place, to_place, minutes) values (?, ?, ?)"
                + " on conflict (from_place, to_place) do update set minutes = excluded.minutes"
                + " where travel.minutes <> excluded.minutes",
            from,
            to,
            minutes)
        > 0;
  }

  /** Says what holds of a place now. */
  void list(String code, Cause cause) {
    Place place = find(code).orElseThrow();
    List<Way> ways =
        database.list(
            "select to_place, minutes from travel where from_place = ? order by to_place",
            row -> new Way(row.getString(1), row.getInt(2)),
            code);
    StreamName stream = StreamName.of("place", code, code);
    journal.append(
        stream,
        journal.load(stream).size(),
        List.of(
            new PlaceListed(
                code, place.name(), place.kind(), place.altitudeM(), place.zone(), ways)),
        cause.step("list-place"));
  }

  private static Place read(ResultSet row) throws SQLException {
    return new Place(
        row.getString("code"),
        row.getString("name"),
        row.getString("kind"),
        row.getBigDecimal("altitude_m"),
        row.getString("zone"));
  }
}
