package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.stock.StockDesk;

/**
 * Finds the best replacement: at the field itself, then the shortest way, then the one that stays
 * certified longest. What is found is locked until the transaction ends; what others have locked is
 * passed over.
 */
@ApplicationScoped
public class Search {
  private static final String HELMET =
      """
      select h.tag, h.place from helmet h
        left join travel t on t.from_place = h.place and t.to_place = ?
       where h.model = ? and h.size = ? and h.state = 'available' and h.reserved_for is null
         and (h.certified_until is null or h.certified_until >= ?) and h.tag <> ?
       order by h.place = ? desc, t.minutes nulls last, h.certified_until desc nulls last, h.tag
       limit 1 for update of h skip locked
      """;
  private static final String PART_PLACES =
      """
      select p.code from place p left join travel t on t.from_place = p.code and t.to_place = ?
       where p.code <> ?
       order by p.code = ? desc, t.minutes nulls last, p.code
      """;

  private final Database database;
  private final StockDesk stock;

  Search(Database database, StockDesk stock) {
    this.database = database;
    this.stock = stock;
  }

  /** A helmet, or a part, and where it is. */
  public record Found(Optional<String> tag, Optional<String> item, String place) {}

  /**
   * @param not the tag of a helmet, or the code of a place, that will not do; may be empty
   */
  Optional<Found> best(Need need, UUID refitCase, String field, LocalDate today, String not) {
    return need.ofHelmet() ? helmet(need, refitCase, field, today, not) : part(need, field, not);
  }

  private Optional<Found> helmet(
      Need need, UUID refitCase, String field, LocalDate today, String not) {
    Optional<Found> found =
        database.first(
            HELMET,
            row -> new Found(Optional.of(row.getString(1)), Optional.empty(), row.getString(2)),
            field,
            need.model().orElseThrow(),
            need.size().orElseThrow(),
            today,
            not,
            field);
    found.ifPresent(
        f ->
            database.change(
                "update helmet set reserved_for = ? where tag = ?",
                refitCase,
                f.tag().orElseThrow()));
    return found;
  }

  private Optional<Found> part(Need need, String field, String not) {
    String item = need.item().orElseThrow();
    List<String> places = database.list(PART_PLACES, row -> row.getString(1), field, not, field);
    for (String place : places) {
      database.lock("stock " + place + " " + item);
      if (stock.pieces(place, item) > reserved(place, item)) {
        return Optional.of(new Found(Optional.empty(), Optional.of(item), place));
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
