package org.tapeline.notify.unreached;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tapeline.journal.quarkus.file.CsvAnswer;
import org.tapeline.notify.phone.Telephone;
import org.tapeline.notify.staff.Staff;

/** The equipment manager's list of people not reached, for a spreadsheet. */
@Path("/unreached.csv")
@RolesAllowed("equipment-manager")
@RunOnVirtualThread
public class UnreachedCsv {
  private static final List<String> HEADER =
      List.of("person", "telephone", "children", "urgency", "since", "why", "tried", "fields");

  private static final int MOST = 10_000;

  private final UnreachedPeople people;
  private final Staff staff;

  UnreachedCsv(UnreachedPeople people, Staff staff) {
    this.people = people;
    this.staff = staff;
  }

  @GET
  public Response list() {
    UnreachedWords say = new UnreachedWords(staff.zone());
    return CsvAnswer.of(
        "people-not-reached",
        HEADER,
        people.list(Optional.empty(), MOST).shown().stream().map(who -> row(who, say)).toList());
  }

  private static List<?> row(Unreached who, UnreachedWords say) {
    return List.of(
        who.name(),
        who.phone().map(Telephone::text).orElse(""),
        who.children().stream().map(say::child).collect(Collectors.joining("; ")),
        say.urgency(who),
        who.since().toString(),
        say.why(who),
        who.tried().stream().map(say::tried).collect(Collectors.joining("; ")),
        who.fields().stream().sorted().collect(Collectors.joining("; ")));
  }
}
