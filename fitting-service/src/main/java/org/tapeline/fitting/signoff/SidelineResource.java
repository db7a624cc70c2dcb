package org.tapeline.fitting.signoff;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import io.smallrye.common.annotation.RunOnVirtualThread;
import io.smallrye.mutiny.Multi;
import io.smallrye.mutiny.infrastructure.Infrastructure;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestStreamElementType;
import org.tapeline.fitting.access.Caller;
import org.tapeline.fitting.problem.Problem;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Transactions;

/** The sideline list: as JSON, as a page, and live. */
@Path("/")
@RolesAllowed({"coach", "fitter", "equipment-manager"})
public class SidelineResource {
  private static final Duration LOOK_AGAIN = Duration.ofSeconds(1);

  private final Sideline sideline;
  private final Caller caller;
  private final Transactions transactions;

  SidelineResource(Sideline sideline, Caller caller, Transactions transactions) {
    this.sideline = sideline;
    this.caller = caller;
    this.transactions = transactions;
  }

  @CheckedTemplate(basePath = "signoff")
  static class Templates {
    private Templates() {}

    static native TemplateInstance sideline(
        List<String> teams, String team, List<Sideline.Line> lines);

    static native TemplateInstance lines(List<Sideline.Line> lines);
  }

  /** The list of a team and up to when it is true. */
  public record TeamList(String team, Optional<Instant> asOf, List<Sideline.Line> players) {}

  @GET
  @Path("/api/sideline")
  @Produces(MediaType.APPLICATION_JSON)
  @RunOnVirtualThread
  @Transactional
  public TeamList json(@QueryParam("team") String team) {
    String own = ownTeam(team);
    return new TeamList(own, sideline.asOf(), sideline.team(own));
  }

  @GET
  @Path("/sideline")
  @Produces(MediaType.TEXT_HTML)
  @RunOnVirtualThread
  @Transactional
  public String page(@QueryParam("team") String team) {
    List<String> teams = ownTeams();
    String chosen =
        team == null || team.isBlank() ? teams.stream().findFirst().orElse("") : ownTeam(team);
    return Templates.sideline(teams, chosen, chosen.isEmpty() ? List.of() : sideline.team(chosen))
        .render();
  }

  /** Looks again every second and sends the list when it has changed, its age included. */
  @GET
  @Path("/sideline/live")
  @Produces(MediaType.SERVER_SENT_EVENTS)
  @RestStreamElementType(MediaType.TEXT_HTML)
  @Blocking
  public Multi<String> live(@QueryParam("team") String team) {
    String own = transactions.required(c -> ownTeam(team));
    return Multi.createFrom()
        .ticks()
        .every(LOOK_AGAIN)
        .onOverflow()
        .drop()
        .emitOn(Infrastructure.getDefaultExecutor())
        .map(tick -> transactions.required(c -> Templates.lines(sideline.team(own)).render()))
        .skip()
        .repetitions();
  }

  private List<String> ownTeams() {
    return PlayerCopy.onRoster().stream()
        .filter(p -> caller.mayFollow(p.team) || caller.mayWorkAt(p.field))
        .map(p -> p.team)
        .distinct()
        .toList();
  }

  private String ownTeam(String team) {
    String wanted = team == null ? "" : team.strip();
    if (caller.mayFollow(wanted) || ownTeams().contains(wanted)) {
      return wanted;
    }
    throw new Problem(
        403,
        "other-team",
        "Not your team",
        "You do not follow the team " + wanted + ".",
        List.of());
  }
}
