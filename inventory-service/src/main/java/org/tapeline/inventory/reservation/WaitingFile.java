package org.tapeline.inventory.reservation;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Objects;
import org.tapeline.inventory.helmet.HelmetAccess;
import org.tapeline.inventory.reservation.WaitingList.Line;
import org.tapeline.journal.quarkus.file.CsvAnswer;

/** The waiting list as a file for a spreadsheet. */
@Path("/waiting.csv")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@RunOnVirtualThread
public class WaitingFile {
  private static final List<String> HEADER =
      List.of(
          "case",
          "player",
          "field",
          "what",
          "urgency",
          "place_in_line",
          "waiting_since",
          "expected_at");

  private final WaitingList waiting;
  private final HelmetAccess access;

  WaitingFile(WaitingList waiting, HelmetAccess access) {
    this.waiting = waiting;
    this.access = access;
  }

  @GET
  public Response file(@QueryParam("field") String field, @QueryParam("need") String need) {
    List<Line> lines =
        waiting.list(
            access.bounds(),
            Objects.requireNonNullElse(field, "").strip(),
            Objects.requireNonNullElse(need, "").strip());
    return CsvAnswer.of("waiting", HEADER, lines.stream().map(WaitingFile::cells).toList());
  }

  private static List<Object> cells(Line line) {
    return List.of(
        line.refitCase(),
        line.player(),
        line.field(),
        line.needKey(),
        line.urgency(),
        line.nth(),
        line.since(),
        line.expectedAt().map(Object::toString).orElse(""));
  }
}
