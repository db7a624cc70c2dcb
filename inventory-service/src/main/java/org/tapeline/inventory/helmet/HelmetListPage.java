package org.tapeline.inventory.helmet;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.tapeline.inventory.helmet.HelmetList.Filter;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.inventory.place.Places;

/** The helmets one by one: filtered, sorted, a hundred a page. */
@Path("/helmets")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class HelmetListPage {
  private static final int PAGE = 100;
  private static final List<String> STATES =
      List.of(
          "ordered",
          "available",
          "reserved",
          "issued",
          "quarantined",
          "held",
          "at-reconditioner",
          "retired");
  private static final List<Head> COLUMNS =
      List.of(
          new Head("tag", "Tag"),
          new Head("model", "Model"),
          new Head("size", "Size"),
          new Head("place", "Place"),
          new Head("state", "State"),
          new Head("certified", "Certified until"));

  private final HelmetList list;
  private final HelmetViews views;
  private final HelmetAccess access;
  private final Places places;
  private final Clock clock;

  HelmetListPage(
      HelmetList list, HelmetViews views, HelmetAccess access, Places places, Clock clock) {
    this.list = list;
    this.views = views;
    this.access = access;
    this.places = places;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "helmet")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(
        List<Places.Place> places,
        List<String> models,
        List<String> sizes,
        List<String> states,
        List<Head> columns,
        HelmetListing listing,
        List<View> helmets,
        Pages pages);
  }

  /** The head of a column, by which the list is sorted. */
  public record Head(String code, String said) {}

  /**
   * Where in the list the page is.
   *
   * @param from the number of its first helmet, counted from 1
   */
  public record Pages(long from, long to, long all, long page, boolean before, boolean after) {
    static Pages of(long wanted, long all) {
      long last = Math.max(1, (all + PAGE - 1) / PAGE);
      long page = Math.clamp(wanted, 1, last);
      long from = (page - 1) * PAGE;
      return new Pages(
          all == 0 ? 0 : from + 1, Math.min(from + PAGE, all), all, page, page > 1, page < last);
    }

    public long previous() {
      return page - 1;
    }

    public long next() {
      return page + 1;
    }
  }

  @GET
  public String show(@BeanParam HelmetListing asked, @QueryParam("page") Optional<Long> page) {
    Optional<List<String>> bounds = access.bounds();
    LocalDate today = LocalDate.now(clock);
    Filter filter = asked.filter();
    Pages pages = Pages.of(page.orElse(1L), list.count(filter, bounds, today));
    List<View> helmets =
        list.list(
            filter,
            bounds,
            today,
            asked.column(),
            asked.isFalling(),
            (pages.page() - 1) * PAGE,
            PAGE);
    return Templates.list(
            places.all(), views.models(), views.sizes(), STATES, COLUMNS, asked, helmets, pages)
        .render();
  }
}
