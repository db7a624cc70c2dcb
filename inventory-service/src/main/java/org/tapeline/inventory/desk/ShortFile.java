package org.tapeline.inventory.desk;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tapeline.inventory.desk.ShortLine.Forecast;
import org.tapeline.journal.quarkus.file.CsvAnswer;

/** What is short and by when, as a file; also what is not short. */
@Path("/short.csv")
@RolesAllowed({"equipment-manager", "warehouse"})
@RunOnVirtualThread
public class ShortFile {
  private static final List<String> HEADER =
      List.of(
          "what",
          "first_day_short",
          "missing",
          "needed_on",
          "needed",
          "needed_low",
          "needed_high",
          "usable",
          "free",
          "waiting",
          "waiting_do_not_wear",
          "on_the_way",
          "next_expected");

  private final ShortList list;
  private final Clock clock;

  ShortFile(ShortList list, Clock clock) {
    this.list = list;
    this.clock = clock;
  }

  @GET
  public Response file() {
    List<List<Object>> rows = new ArrayList<>();
    list.lines(LocalDate.now(clock)).forEach(line -> rows.add(cells(line)));
    return CsvAnswer.of("short", HEADER, rows);
  }

  private static List<Object> cells(ShortLine line) {
    Forecast f = line.forecast().orElse(null);
    return Arrays.asList(
        line.needKey(),
        line.shortage().map(Shortage::firstDay).orElse(null),
        line.shortage().map(Shortage::missing).orElse(0),
        f == null ? null : f.neededOn(),
        f == null ? null : f.rounded(),
        f == null ? null : f.low(),
        f == null ? null : f.high(),
        line.counts().usable(),
        line.counts().free(),
        line.counts().waiting(),
        line.counts().urgent(),
        line.onTheWay(),
        line.coming().isEmpty() ? null : line.coming().getFirst().day());
  }
}
