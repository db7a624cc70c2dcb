package org.tapeline.fitting.fitday;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * The coming fit days for calendar programs, which cannot sign in: by a link that nobody guesses,
 * and with nothing of any player. Nothing of it is kept by caches or search engines.
 */
@Path("/calendar/{token}/fit-days.ics")
@PermitAll
@RunOnVirtualThread
public class FitDayFeedResource {
  private final FitDayFeedLink link;
  private final FitDayFeed feed;

  FitDayFeedResource(FitDayFeedLink link, FitDayFeed feed) {
    this.link = link;
    this.feed = feed;
  }

  @GET
  public Response days(@PathParam("token") String token) {
    FeedKey.Scope scope =
        link.open(token)
            .orElseThrow(
                () ->
                    Problem.notFound(
                        "This calendar link does not work. Copy it again from the page of the fit"
                            + " days."));
    return Response.ok(feed.of(scope::shows, day -> List.of()))
        .type(FitDayFeed.TYPE)
        .header("Cache-Control", "private, no-store")
        .header("Referrer-Policy", "no-referrer")
        .header("X-Robots-Tag", "noindex, nofollow")
        .build();
  }
}
