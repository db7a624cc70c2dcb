package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.stock.StockDesk;

/**
 * Finds the best replacement: the helmet with the fewest minutes against it ({@link Candidate}),
 * the part with the shortest way. What is found is locked until the transaction ends; what others
 * have locked is passed over.
 */
@ApplicationScoped
public class Search {
  /** {@link Candidate#score}, said to the database; a test holds the two together. */
  private static final String AGAINST =
      """
      case when h.place = ? then 0 else ?::float8 + coalesce(t.minutes, ?::float8) end
        + least(h.marks, ?) * ?::float8
        + case when h.certified_until is null then ?::float8
               else greatest(0, ? - (h.certified_until - ?::date)) * ?::float8 end
      """;

  private static final String HELMET =
      """
      select h.tag, h.place, t.minutes, h.marks, h.certified_until from helmet h
        left join travel t on t.from_place = h.place and t.to_place = ?
       where h.model = ? and h.size = ? and h.state = 'available' and h.reserved_for is null
         and h.planned_for is null
         and (h.certified_until is null or h.certified_until >= ?) and h.tag <> ?
       order by\s
      """
          + AGAINST
          + ", h.certified_until desc nulls last, h.tag limit 1 for update of h skip locked";
  private static final String PART_PLACES =
      """
      select p.code, t.minutes, there.pieces - coalesce(kept.pieces, 0) as free
        from place p
        join (select substr(account, 7) as place, sum(amount) as pieces from ledger_entry
               where account like 'place:%' and item = ? group by 1) there on there.place = p.code
        left join (select from_place, count(*) as pieces from reservation
                    where status = 'live' and item = ? group by 1) kept on kept.from_place = p.code
        left join travel t on t.from_place = p.code and t.to_place = ?
       where p.code <> ? and there.pieces > coalesce(kept.pieces, 0)
       order by p.code = ? desc, t.minutes nulls last, p.code
      """;

  private final Database database;
  private final StockDesk stock;
  private final SearchWeights weights;

  Search(Database database, StockDesk stock, SearchWeights weights) {
    this.database = database;
    this.stock = stock;
    this.weights = weights;
  }

  /**
   * A helmet, or a part, and where it is.
   *
   * @param why it and no other, as a sentence
   */
  public record Found(Optional<String> tag, Optional<String> item, String place, String why) {}

  /**
   * @param not the tag of a helmet, or the code of a place, that will not do; may be empty
   */
  Optional<Found> best(Need need, UUID refitCase, String field, LocalDate today, String not) {
    return need.ofHelmet() ? helmet(need, refitCase, field, today, not) : part(need, field, not);
  }

  private Optional<Found> helmet(
      Need need, UUID refitCase, String field, LocalDate today, String not) {
    Optional<Found> found =
        database
            .first(
                HELMET,
                row -> candidate(row, field),
                field,
                need.model().orElseThrow(),
                need.size().orElseThrow(),
                today,
                not,
                field,
                weights.elsewhere(),
                weights.wayUnknown(),
                weights.mostMarks(),
                weights.perMark(),
                weights.certificationUnknown(),
                weights.daysEnough(),
                today,
                weights.perDayMissing())
            .map(c -> found(c, today));
    found.ifPresent(
        f ->
            database.change(
                "update helmet set reserved_for = ? where tag = ?",
                refitCase,
                f.tag().orElseThrow()));
    return found;
  }

  private Found found(Candidate c, LocalDate today) {
    return new Found(Optional.of(c.tag()), Optional.empty(), c.place(), c.why(weights, today));
  }

  private static Candidate candidate(ResultSet row, String field) throws SQLException {
    return new Candidate(
        row.getString("tag"),
        row.getString("place"),
        row.getString("place").equals(field),
        Optional.ofNullable(row.getObject("minutes", Integer.class)),
        row.getInt("marks"),
        Optional.ofNullable(row.getObject("certified_until", LocalDate.class)));
  }

  /** A place with pieces of a part to spare. */
  private record Spare(String place, Optional<Integer> minutes, int free) {
    String why(boolean here) {
      String whence =
          here
              ? "At the field already"
              : "From "
                  + place
                  + minutes.map(m -> ", " + m + " minutes away").orElse(", the way not known");
      return whence + ", " + free + " to spare there: the nearest place that had any.";
    }
  }

  private Optional<Found> part(Need need, String field, String not) {
    String item = need.item().orElseThrow();
    List<Spare> places =
        database.list(
            PART_PLACES,
            row ->
                new Spare(
                    row.getString("code"),
                    Optional.ofNullable(row.getObject("minutes", Integer.class)),
                    row.getInt("free")),
            item,
            item,
            field,
            not,
            field);
    for (Spare spare : places) {
      // Others may have taken it since it was read; under the lock they cannot.
      database.lock("stock " + spare.place() + " " + item);
      if (stock.pieces(spare.place(), item) > reserved(spare.place(), item)) {
        String why = spare.why(spare.place().equals(field));
        return Optional.of(new Found(Optional.empty(), Optional.of(item), spare.place(), why));
      }
    }
    return Optional.empty();
  }

  private int reserved(String place, String item) {
    return database
        .first(
            "select count(*) from reservation"
                + " where status = 'live' and from_place = ? and item = ?",
            row -> row.getInt(1),
            place,
            item)
        .orElse(0);
  }
}
