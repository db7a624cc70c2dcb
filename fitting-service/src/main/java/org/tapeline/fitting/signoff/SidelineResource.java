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
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestStreamElementType;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** The sideline list: as JSON, as a page, and live. */
@Path("/")
@RolesAllowed({"coach", "fitter", "equipment-manager"})
public class SidelineResource {
  private static final Duration LOOK_AGAIN = Duration.ofSeconds(2);

  private final Sideline sideline;
  private final Caller caller;
  private final Transactions transactions;
  private final Clock clock;

  SidelineResource(Sideline sideline, Caller caller, Transactions transactions, Clock clock) {
    this.clock = clock;
    this.sideline = sideline;
    this.caller = caller;
    this.transactions = transactions;
  }

  @CheckedTemplate(basePath = "signoff")
  static class Templates {
    private Templates() {}

    static native TemplateInstance sideline(
        List<String> teams, String team, List<Sideline.Line> lines, String at, long oldestSeconds);

    static native TemplateInstance lines(List<Sideline.Line> lines, String at);
  }

  /** The list of a team and up to when it is true. */
  public record TeamList(String team, Optional<Instant> asOf, List<Sideline.Line> players) {}

  TeamList json(String team) {
    List<PlayerCopy> own = ownPlayers();
    String chosen = chosen(team, teams(own));
    Sideline.Seen seen = sideline.seen(of(chosen, own));
    return new TeamList(chosen, seen.asOf(), seen.lines());
  }

  @GET
  @Path("/sideline")
  @Produces(MediaType.TEXT_HTML)
  @RunOnVirtualThread
  @Transactional
  public String page(@QueryParam("team") String team) {
    List<PlayerCopy> own = ownPlayers();
    List<String> teams = teams(own);
    String chosen = chosen(team, teams);
    return Templates.sideline(
            teams,
            chosen,
            sideline.lines(of(chosen, own)),
            now(),
            sideline.oldestPicture().toSeconds())
        .render();
  }

  /**
   * Sends the list again and again, changed or not: a page that hears nothing for longer than a
   * picture may be old knows by that that it must not show "may wear" any more.
   */
  @GET
  @Path("/sideline/live")
  @Produces(MediaType.SERVER_SENT_EVENTS)
  @RestStreamElementType(MediaType.TEXT_HTML)
  @Blocking
  public Multi<String> live(@QueryParam("team") String team) {
    Set<UUID> seen =
        transactions.required(
            c -> {
              List<PlayerCopy> own = ownPlayers();
              return of(chosen(team, teams(own)), own).stream()
                  .map(p -> p.player)
                  .collect(Collectors.toSet());
            });
    if (seen.isEmpty()) {
      return Multi.createFrom().empty();
    }
    return Multi.createFrom()
        .ticks()
        .every(LOOK_AGAIN)
        .onOverflow()
        .drop()
        .emitOn(Infrastructure.getDefaultExecutor())
        .map(tick -> transactions.required(c -> fragment(seen)));
  }

  private String fragment(Set<UUID> seen) {
    List<PlayerCopy> players = PlayerCopy.onRosterAmong(seen);
    return Templates.lines(sideline.lines(players), now()).render();
  }

  private String now() {
    return clock.instant().truncatedTo(ChronoUnit.SECONDS).toString();
  }

  /** Those of own teams, and for a fitter those of own fields. */
  private List<PlayerCopy> ownPlayers() {
    return PlayerCopy.onRoster().stream()
        .filter(p -> caller.mayFollow(p.team) || caller.mayWorkAt(p.field))
        .toList();
  }

  private static List<String> teams(List<PlayerCopy> own) {
    return own.stream().map(p -> p.team).distinct().toList();
  }

  private static List<PlayerCopy> of(String team, List<PlayerCopy> own) {
    return own.stream().filter(p -> p.team.equals(team)).toList();
  }

  /** The team asked for; where none is, the first of the own ones. */
  private String chosen(String team, List<String> own) {
    if (team == null || team.isBlank()) {
      return own.stream().findFirst().orElse("");
    }
    String wanted = team.strip();
    if (caller.mayFollow(wanted) || own.contains(wanted)) {
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
