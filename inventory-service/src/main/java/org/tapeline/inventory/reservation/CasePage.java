package org.tapeline.inventory.reservation;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.reservation.CaseFacts.Facts;
import org.tapeline.inventory.reservation.CaseFacts.Kept;
import org.tapeline.inventory.reservation.CaseFacts.NeedLine;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** One re-fit case: what it needs, what is kept for it and why that, or its place in line. */
@Path("/cases/{refitCase}")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class CasePage {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("EEE, MMM d, h:mm a", Locale.US);

  private final CaseFacts cases;
  private final WaitingList waiting;
  private final Places places;
  private final Caller caller;

  CasePage(CaseFacts cases, WaitingList waiting, Places places, Caller caller) {
    this.cases = cases;
    this.waiting = waiting;
    this.places = places;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "reservation")
  static class Templates {
    private Templates() {}

    static native TemplateInstance one(
        Facts facts, String opened, List<NeedRow> needs, List<KeptRow> kept);
  }

  /** A need, with its place in line while it waits. */
  public record NeedRow(NeedLine need, String line) {}

  /** A reservation with its times as they are at the field. */
  public record KeptRow(Kept kept, String ready, String expires) {}

  @GET
  public String show(@PathParam("refitCase") UUID refitCase) {
    Facts facts =
        cases
            .find(refitCase)
            .orElseThrow(() -> Problem.notFound("There is no re-fit case " + refitCase + "."));
    if (!caller.worksAs("warehouse") && !caller.mayWorkAt(facts.field())) {
      throw Problem.otherField("This re-fit is at a field that is not yours.");
    }
    ZoneId zone = places.zone(facts.field());
    return Templates.one(
            facts,
            say(facts.openedAt(), zone),
            cases.needs(refitCase).stream().map(n -> new NeedRow(n, line(refitCase, n))).toList(),
            cases.kept(refitCase).stream()
                .map(k -> new KeptRow(k, say(k.readyAt(), zone), say(k.expiresAt(), zone)))
                .toList())
        .render();
  }

  private String line(UUID refitCase, NeedLine need) {
    return waiting.list(Optional.empty(), "", need.needKey()).stream()
        .filter(line -> line.refitCase().equals(refitCase))
        .findFirst()
        .map(line -> "Number " + line.nth() + " of " + line.allWhoWait() + " who wait")
        .orElse("");
  }

  private static String say(Instant at, ZoneId zone) {
    return MOMENT.format(at.atZone(zone));
  }
}
