package org.tapeline.inventory.stock;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.tapeline.inventory.database.Database;

/** Parts by place and item, as JSON. */
@Path("/api/stock")
@RolesAllowed({"equipment-manager", "warehouse"})
@RunOnVirtualThread
public class StockResource {
  private static final String LINES =
      """
      with there as (
        select substr(account, 7) as place, item, model, sum(amount)::int as pieces
          from ledger_entry where account like 'place:%' group by 1, 2, 3),
      kept as (
        select from_place as place, item, count(*)::int as kept
          from reservation where status = 'live' and item is not null group by 1, 2)
      select t.place, t.item, t.model, t.pieces, coalesce(k.kept, 0) as kept
        from there t left join kept k on k.place = t.place and k.item = t.item
       where (? = '' or t.place = ?) order by t.place, t.item, t.model
      """;

  private final Database database;

  StockResource(Database database) {
    this.database = database;
  }

  /**
   * A part at a place.
   *
   * @param model empty for any
   * @param pieces less than 0 when more was used than the books had
   * @param kept pieces of that part, for any model, that re-fit cases wait to have
   */
  public record Line(String place, String item, String model, int pieces, int kept) {
    public boolean negative() {
      return pieces < 0;
    }
  }

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  public List<Line> json(@QueryParam("place") String place) {
    String wanted = place == null ? "" : place;
    return database.list(
        LINES,
        row ->
            new Line(
                row.getString("place"),
                row.getString("item"),
                row.getString("model"),
                row.getInt("pieces"),
                row.getInt("kept")),
        wanted,
        wanted);
  }
}
