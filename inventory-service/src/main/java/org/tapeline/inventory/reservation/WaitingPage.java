package org.tapeline.inventory.reservation;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.tapeline.inventory.helmet.HelmetAccess;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.reservation.WaitingList.Line;

/** The waiting list: the urgent first, then who has waited longest. */
@Path("/waiting")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class WaitingPage {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE, MMM d", Locale.US);

  private final WaitingList waiting;
  private final HelmetAccess access;
  private final Places places;

  WaitingPage(WaitingList waiting, HelmetAccess access, Places places) {
    this.waiting = waiting;
    this.access = access;
    this.places = places;
  }

  @CheckedTemplate(basePath = "reservation")
  static class Templates {
    private Templates() {}

    static native TemplateInstance waiting(List<Row> rows, String field, String need);
  }

  /** A line with its days, as they are at the field. */
  public record Row(Line line, String since, String sinceSort, String expected) {}

  @GET
  public String show(@QueryParam("field") String field, @QueryParam("need") String need) {
    String at = Objects.requireNonNullElse(field, "").strip();
    String what = Objects.requireNonNullElse(need, "").strip();
    return Templates.waiting(rows(waiting.list(access.bounds(), at, what)), at, what).render();
  }

  private List<Row> rows(List<Line> lines) {
    Map<String, ZoneId> zones = new HashMap<>();
    return lines.stream()
        .map(
            line -> {
              ZoneId zone = zones.computeIfAbsent(line.field(), places::zone);
              return new Row(
                  line,
                  DAY.format(line.since().atZone(zone)),
                  line.since().toString(),
                  line.expectedAt().map(at -> DAY.format(at.atZone(zone))).orElse(""));
            })
        .toList();
  }
}
