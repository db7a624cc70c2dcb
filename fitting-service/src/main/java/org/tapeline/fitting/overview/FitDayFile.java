package org.tapeline.fitting.overview;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.tapeline.fitting.fitday.FitDayFeed;
import org.tapeline.fitting.fitday.FitDayView;
import org.tapeline.journal.quarkus.access.Caller;

/** The coming fit days of the own fields as a calendar file, with who is booked. */
@Path("/fit-days.ics")
@RolesAllowed({"fitter", "equipment-manager"})
@RunOnVirtualThread
public class FitDayFile {
  private final FitDayFeed feed;
  private final BookedPlayers booked;
  private final Caller caller;

  FitDayFile(FitDayFeed feed, BookedPlayers booked, Caller caller) {
    this.feed = feed;
    this.booked = booked;
    this.caller = caller;
  }

  @GET
  public Response days() {
    return Response.ok(feed.of(caller::mayWorkAt, this::lines))
        .type(FitDayFeed.TYPE)
        .header("Content-Disposition", "attachment; filename=\"fit-days.ics\"")
        .header("Cache-Control", "private, no-store")
        .build();
  }

  private List<String> lines(FitDayView day) {
    return booked.on(day).stream().map(b -> b.from() + " " + b.name()).toList();
  }
}
