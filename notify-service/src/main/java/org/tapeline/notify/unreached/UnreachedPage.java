package org.tapeline.notify.unreached;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.notify.staff.Staff;

/** People whom somebody has to reach: the equipment manager's, or those of a fitter's fields. */
@Path("/unreached")
@RolesAllowed({"equipment-manager", "fitter"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class UnreachedPage {
  private static final int MOST = 500;

  private final UnreachedPeople people;
  private final Reaching reaching;
  private final Staff staff;
  private final Caller caller;

  UnreachedPage(UnreachedPeople people, Reaching reaching, Staff staff, Caller caller) {
    this.people = people;
    this.reaching = reaching;
    this.staff = staff;
    this.caller = caller;
  }

  /**
   * A line of the list.
   *
   * @param commandId of the button, so that pressing it twice does it once
   */
  public record Line(Unreached who, UUID commandId) {}

  /** A team with people to reach, for the link to its printed sheet. */
  public record Team(String code, String name) {}

  @CheckedTemplate(basePath = "unreached")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(
        List<Line> people, int families, List<Team> teams, UnreachedWords say, String problem);
  }

  @GET
  public TemplateInstance list() {
    return page("");
  }

  /**
   * @param team whose sheet the button stands on; absent on this list
   */
  @POST
  @Path("/reached")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response reached(
      @RestForm String commandId,
      @RestForm String guardian,
      @RestForm List<String> notice,
      @RestForm String way,
      @RestForm String team) {
    try {
      reaching.reached(
          Reports.id("guardian", guardian),
          Reports.ids("notice", notice),
          Reports.way(way),
          CommandId.of(commandId));
      return Answers.goTo(
          team != null && team.matches("[A-Za-z0-9-]{1,40}")
              ? "/notify/teams/" + team + "/sheet"
              : "/notify/unreached");
    } catch (Problem problem) {
      return Response.status(problem.status()).entity(page(problem.getMessage()).render()).build();
    }
  }

  private TemplateInstance page(String problem) {
    UnreachedPeople.Found found = people.list(scope(), MOST);
    TreeMap<String, String> teams = new TreeMap<>();
    found.shown().stream()
        .flatMap(who -> who.children().stream())
        .forEach(child -> teams.put(child.team(), child.teamName()));
    return Templates.list(
        found.shown().stream().map(who -> new Line(who, UuidV7.next())).toList(),
        found.families(),
        teams.entrySet().stream().map(t -> new Team(t.getKey(), t.getValue())).toList(),
        new UnreachedWords(staff.zone()),
        problem);
  }

  private Optional<Collection<String>> scope() {
    return caller.isManager() ? Optional.empty() : Optional.of(caller.fields());
  }
}
