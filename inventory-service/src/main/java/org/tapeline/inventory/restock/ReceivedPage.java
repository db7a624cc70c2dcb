package org.tapeline.inventory.restock;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.restock.Receipt.Came;

/** What came last: short, damaged and more than was asked for. */
@Path("/restock/received")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class ReceivedPage {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("MMM d, h:mm a", Locale.US);
  private static final String LAST =
      """
      select * from restock where state = 'received' and came is not null
       order by received_at desc nulls last limit 200
      """;

  private final Database database;
  private final Places places;

  ReceivedPage(Database database, Places places) {
    this.database = database;
    this.places = places;
  }

  @CheckedTemplate(basePath = "restock")
  static class Templates {
    private Templates() {}

    static native TemplateInstance received(List<Received> lines);
  }

  /** A request that is over; {@code missing} and {@code over} against what was asked for. */
  public record Received(
      String at,
      String place,
      String item,
      int asked,
      int good,
      int damaged,
      int missing,
      int over) {}

  @GET
  public String show() {
    return Templates.received(database.list(LAST, this::read)).render();
  }

  private Received read(ResultSet row) throws SQLException {
    Came came = new Came(row.getInt("quantity"), row.getInt("came"), row.getInt("damaged"));
    ZoneId zone = places.zone(row.getString("place"));
    return new Received(
        DAY.format(Database.instant(row, "received_at").atZone(zone)),
        row.getString("place"),
        row.getString("item"),
        came.asked(),
        came.good(),
        came.damaged(),
        came.missing(),
        came.over());
  }
}
