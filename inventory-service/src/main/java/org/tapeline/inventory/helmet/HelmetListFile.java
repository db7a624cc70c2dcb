package org.tapeline.inventory.helmet;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.journal.quarkus.file.CsvAnswer;

/** All helmets of a list as a file; who has them stays out of it. */
@Path("/helmets.csv")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@RunOnVirtualThread
public class HelmetListFile {
  private static final int MOST = 500_000;
  private static final List<String> HEADER =
      List.of(
          "tag", "model", "size", "lot", "manufactured_on", "certified_until", "place", "state");

  private final HelmetList list;
  private final HelmetAccess access;
  private final Clock clock;

  HelmetListFile(HelmetList list, HelmetAccess access, Clock clock) {
    this.list = list;
    this.access = access;
    this.clock = clock;
  }

  @GET
  public Response file(@BeanParam HelmetListing asked) {
    List<View> helmets =
        list.list(
            asked.filter(),
            access.bounds(),
            LocalDate.now(clock),
            asked.column(),
            asked.isFalling(),
            0,
            MOST);
    return CsvAnswer.of("helmets", HEADER, helmets.stream().map(HelmetListFile::cells).toList());
  }

  private static List<Object> cells(View helmet) {
    return Arrays.asList(
        helmet.tag(),
        helmet.model(),
        helmet.size(),
        helmet.lot(),
        helmet.manufacturedOn().orElse(null),
        helmet.certifiedUntil().orElse(null),
        helmet.place(),
        helmet.state());
  }
}
