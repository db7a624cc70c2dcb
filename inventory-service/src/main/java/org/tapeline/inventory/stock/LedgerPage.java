package org.tapeline.inventory.stock;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.place.Places.Place;
import org.tapeline.journal.quarkus.http.Problem;

/** The moves of a part at a place, the newest first, with what the books had after each. */
@Path("/stock/ledger")
@RolesAllowed({"equipment-manager", "warehouse"})
@RunOnVirtualThread
public class LedgerPage {
  private static final int MOST = 500;
  private static final String CODE = "[a-z0-9][a-z0-9:-]{0,120}";
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("MMM d, uuuu, h:mm a", Locale.US);

  private final Books books;
  private final Places places;

  LedgerPage(Books books, Places places) {
    this.books = books;
    this.places = places;
  }

  @CheckedTemplate(basePath = "stock")
  static class Templates {
    private Templates() {}

    static native TemplateInstance ledger(
        Place place, String item, String model, List<Line> lines, boolean more);
  }

  /** An entry with its time at the place, in words. */
  public record Line(String when, Books.Entry entry) {
    public String amountSaid() {
      return entry.amount() > 0 ? "+" + entry.amount() : "\u2212" + -entry.amount();
    }
  }

  @GET
  @Produces(MediaType.TEXT_HTML)
  public String show(
      @QueryParam("place") String code,
      @QueryParam("item") String item,
      @QueryParam("model") String model) {
    Place place = place(code);
    String kept = model == null ? "*" : model;
    List<Books.Entry> entries = books.moves(place.code(), item(item), kept, MOST + 1);
    ZoneId zone = ZoneId.of(place.zone());
    List<Line> lines =
        entries.stream()
            .limit(MOST)
            .map(e -> new Line(MOMENT.format(e.at().atZone(zone)), e))
            .toList();
    return Templates.ledger(place, item, kept, lines, entries.size() > MOST).render();
  }

  /** All of them as CSV, times in UTC. */
  @GET
  @Path("/csv")
  @Produces("text/csv;charset=UTF-8")
  public Response csv(
      @QueryParam("place") String code,
      @QueryParam("item") String item,
      @QueryParam("model") String model) {
    Place place = place(code);
    String kept = model == null ? "*" : model;
    return Response.ok(
            LedgerCsv.of(
                place.code(), item(item), books.moves(place.code(), item, kept, Integer.MAX_VALUE)))
        .header(
            "Content-Disposition",
            "attachment; filename=\"ledger-"
                + place.code()
                + "-"
                + item.replace(':', '-')
                + ".csv\"")
        .build();
  }

  private Place place(String code) {
    return places
        .find(code == null ? "" : code)
        .orElseThrow(
            () -> Problem.notFound("There is no such place. Choose one on the stock page."));
  }

  private static String item(String item) {
    if (item == null || !item.matches(CODE)) {
      throw Problem.notFound("There is no such part. Choose one on the stock page.");
    }
    return item;
  }
}
