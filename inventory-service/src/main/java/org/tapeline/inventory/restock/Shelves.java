package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.stock.Move;

/** What is on the shelves and on its way to them. */
@ApplicationScoped
public class Shelves {
  private static final String PARTS =
      "select coalesce(sum(amount), 0) from ledger_entry where account = ? and item = ?";
  private static final String HELMETS =
      """
      select count(*) from helmet where state = 'available' and place = ? and model = ? and size = ?
         and (certified_until is null or certified_until >= current_date)
      """;
  private static final String KEPT_PARTS =
      "select count(*) from reservation where status = 'live' and from_place = ? and item = ?";
  private static final String KEPT_HELMETS =
      """
      select count(*) from helmet where state = 'available' and place = ? and model = ? and size = ?
         and reserved_for is not null
      """;
  private static final String LEAVING =
      """
      select coalesce(sum(for_stock), 0) from restock where kind = 'transfer' and from_place = ?
         and item = ? and state in ('requested', 'picked', 'shipped')
      """;
  private static final String COMING =
      """
      select coalesce(sum(case kind when 'restock' then quantity else for_stock end), 0)
        from restock where place = ? and item = ? and state in ('requested', 'picked', 'shipped')
      """;
  private static final String WAITING =
      """
      select count(*) from case_need n join refit_case c on c.refit_case = n.refit_case
       where c.open and c.field = ? and n.need_key = ? and n.status = 'waiting'
      """;

  private final Database database;

  Shelves(Database database) {
    this.database = database;
  }

  Shelf at(String place, String item) {
    String[] words = item.split(":");
    boolean helmet = words.length == 3;
    int onHand =
        helmet
            ? number(HELMETS, place, words[1], words[2])
            : number(PARTS, Move.place(place), item);
    int kept =
        helmet ? number(KEPT_HELMETS, place, words[1], words[2]) : number(KEPT_PARTS, place, item);
    return new Shelf(
        place,
        item,
        onHand,
        kept + number(LEAVING, place, item),
        number(COMING, place, item),
        number(WAITING, place, item));
  }

  private int number(String sql, Object... values) {
    return database.first(sql, row -> row.getInt(1), values).orElse(0);
  }

  /** The helmet items of a model that are anywhere or worn by somebody. */
  List<String> helmetItems() {
    return database.list(
        "select distinct 'helmet:' || model || ':' || size from helmet"
            + " where state <> 'retired' order by 1",
        row -> row.getString(1));
  }
}
