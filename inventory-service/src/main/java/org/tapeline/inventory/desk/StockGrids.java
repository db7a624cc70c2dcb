package org.tapeline.inventory.desk;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.desk.Grid.Cell;
import org.tapeline.inventory.desk.Grid.Label;
import org.tapeline.inventory.helmet.Words;
import org.tapeline.inventory.place.Places;

/** Counts what is where, in the database: a grid costs the same whether 100 helmets or 100,000. */
@ApplicationScoped
public class StockGrids {
  private static final String HELMETS =
      """
      with there as (
        select place, size,
               count(*) filter (where state = 'available' and reserved_for is null
                 and planned_for is null and (certified_until is null or certified_until >= ?)) as free,
               count(*) filter (where reserved_for is not null
                 or state = 'available' and planned_for is not null) as kept,
               count(*) filter (where state = 'issued') as out,
               count(*) filter (where state in ('quarantined', 'held', 'at-reconditioner')
                 or state = 'available' and reserved_for is null
                 and planned_for is null and certified_until < ?) as aside
          from helmet where model = ? and state not in ('ordered', 'retired')
           and (? = '' or place = ?) group by 1, 2),
      missing as (
        select c.field as place, n.size, count(*) as waiting
          from refit_case c join case_need n on n.refit_case = c.refit_case
         where c.open and n.status = 'waiting' and n.kind = 'helmet' and n.model = ?
           and (? = '' or c.field = ?) group by 1, 2)
      select coalesce(t.place, m.place) as place, coalesce(t.size, m.size) as size,
             coalesce(free, 0)::int as free, coalesce(kept, 0)::int as kept,
             coalesce(out, 0)::int as out, coalesce(aside, 0)::int as aside,
             coalesce(waiting, 0)::int as waiting
        from there t full join missing m on m.place = t.place and m.size = t.size
      """;
  private static final String PARTS =
      """
      with by_model as (
        select substr(account, 7) as place, item, model, sum(amount) as pieces
          from ledger_entry where account like 'place:%' group by 1, 2, 3),
      there as (select place, item, sum(pieces) as pieces, bool_or(pieces < 0) as below
                  from by_model group by 1, 2),
      kept as (
        select from_place as place, item, count(*) as kept
          from reservation where status = 'live' and item is not null group by 1, 2),
      missing as (
        select c.field as place, n.item, count(*) as waiting
          from refit_case c join case_need n on n.refit_case = c.refit_case
         where c.open and n.status = 'waiting' and n.kind = 'part' group by 1, 2)
      select coalesce(t.place, m.place) as place, coalesce(t.item, m.item) as item,
             (coalesce(t.pieces, 0) - coalesce(k.kept, 0))::int as free,
             coalesce(k.kept, 0)::int as kept, coalesce(m.waiting, 0)::int as waiting,
             coalesce(t.below, false) as below
        from there t full join missing m on m.place = t.place and m.item = t.item
        left join kept k on k.place = t.place and k.item = t.item
       where (? = '' or coalesce(t.place, m.place) = ?) and (? = '' or coalesce(t.item, m.item) = ?)
      """;

  private final Database database;
  private final Places places;

  StockGrids(Database database, Places places) {
    this.database = database;
    this.places = places;
  }

  /** A counted cell with where it belongs. */
  record Counted(String place, String kind, Cell cell) {}

  List<Counted> helmets(String model, String place, LocalDate today) {
    return database.list(
        HELMETS,
        row -> {
          String at = row.getString("place");
          String size = row.getString("size");
          String href = "/inventory/helmets?place=" + at + "&model=" + model + "&size=" + size;
          return new Counted(
              at,
              size,
              new Cell(
                  row.getInt("free"),
                  row.getInt("kept"),
                  row.getInt("out"),
                  row.getInt("aside"),
                  row.getInt("waiting"),
                  false,
                  href));
        },
        today,
        today,
        model,
        place,
        place,
        model,
        place,
        place);
  }

  List<Counted> parts(String place, String item) {
    return database.list(
        PARTS,
        row -> {
          String at = row.getString("place");
          return new Counted(
              at,
              row.getString("item"),
              new Cell(
                  row.getInt("free"),
                  row.getInt("kept"),
                  0,
                  0,
                  row.getInt("waiting"),
                  row.getBoolean("below") || row.getInt("free") < 0,
                  "/inventory/stock?place=" + at));
        },
        place,
        place,
        item,
        item);
  }

  /** Places down, sizes across. */
  Grid byPlaceAndSize(List<Counted> counted) {
    List<Label> sizes =
        counted.stream()
            .map(Counted::kind)
            .distinct()
            .sorted(SizeOrder.smallFirst())
            .map(size -> new Label(size, Words.code(size), ""))
            .toList();
    Map<List<String>, Cell> cells = new LinkedHashMap<>();
    counted.forEach(c -> cells.put(List.of(c.place(), c.kind()), c.cell()));
    return Grid.of(placesOf(counted), sizes, cells);
  }

  /** Parts down, places across. */
  Grid byPartAndPlace(List<Counted> counted) {
    Map<List<String>, Cell> cells = new LinkedHashMap<>();
    counted.forEach(c -> cells.put(List.of(c.kind(), c.place()), c.cell()));
    return Grid.of(partsOf(counted), placesOf(counted), cells);
  }

  /** The same, places down: for a phone, a card a place. */
  Grid byPlaceAndPart(List<Counted> counted) {
    Map<List<String>, Cell> cells = new LinkedHashMap<>();
    counted.forEach(c -> cells.put(List.of(c.place(), c.kind()), c.cell()));
    return Grid.of(placesOf(counted), partsOf(counted), cells);
  }

  private static List<Label> partsOf(List<Counted> counted) {
    return counted.stream()
        .map(Counted::kind)
        .distinct()
        .sorted(Comparator.naturalOrder())
        .map(item -> new Label(item, Words.code(item), ""))
        .toList();
  }

  /** Depots first: what comes from there is looked for there. */
  private List<Label> placesOf(List<Counted> counted) {
    Set<String> there = counted.stream().map(Counted::place).collect(Collectors.toSet());
    return places.all().stream()
        .filter(p -> there.contains(p.code()))
        .sorted(Comparator.comparing(p -> !p.kind().equals("depot")))
        .map(p -> new Label(p.code(), p.name(), p.code()))
        .toList();
  }
}
