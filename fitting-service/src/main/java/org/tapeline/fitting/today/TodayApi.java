package org.tapeline.fitting.today;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** A fitter's day for programs. */
@Path("/api/today")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class TodayApi {
  private final DayList list;

  TodayApi(DayList list) {
    this.list = list;
  }

  /** The list and up to when it is true. */
  public record Today(Optional<Instant> asOf, List<DayList.Item> players) {}

  @GET
  @Transactional
  public Today json() {
    DayList.Day day = list.now();
    return new Today(day.asOf(), day.items());
  }
}
