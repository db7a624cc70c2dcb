package org.tapeline.fitting.refit;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.access.Caller;
import org.tapeline.fitting.fitday.Booking;
import org.tapeline.fitting.fitday.FitDays;
import org.tapeline.fitting.problem.Problem;
import org.tapeline.fitting.roster.AdvisedSizeCopy;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.session.OpenSession;
import org.tapeline.fitting.signoff.Sideline;
import org.tapeline.fitting.signoff.WearState;
import org.tapeline.journal.UuidV7;

/** Players with their state, for the fitter; as pages and as JSON. */
@Path("/")
@RolesAllowed({"fitter", "equipment-manager"})
@RunOnVirtualThread
public class PlayerPages {
  private final Sideline sideline;
  private final FitDays fitDays;
  private final Caller caller;

  PlayerPages(Sideline sideline, FitDays fitDays, Caller caller) {
    this.sideline = sideline;
    this.fitDays = fitDays;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "roster")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<Entry> players, List<String> teams, String team);

    static native TemplateInstance one(Entry player, UUID commandId);
  }

  /** A player with all that a fitter needs to know. */
  public record Entry(
      UUID player,
      String number,
      String name,
      String team,
      String field,
      WearState state,
      String tag,
      List<AdvisedSizeCopy> advice,
      RefitCaseRow refit,
      Booking booking,
      UUID openSession) {}

  @GET
  @Path("/players")
  @Produces(MediaType.TEXT_HTML)
  @Transactional
  public String list(@QueryParam("team") String team) {
    List<PlayerCopy> own =
        PlayerCopy.onRoster().stream().filter(p -> caller.mayWorkAt(p.field)).toList();
    List<String> teams = own.stream().map(p -> p.team).distinct().toList();
    String wanted = team == null ? "" : team;
    return Templates.list(
            own.stream()
                .filter(p -> wanted.isEmpty() || p.team.equals(wanted))
                .map(this::entry)
                .toList(),
            teams,
            wanted)
        .render();
  }

  @GET
  @Path("/players/{player}")
  @Produces(MediaType.TEXT_HTML)
  @Transactional
  public String one(@PathParam("player") String reference) {
    return Templates.one(entry(own(reference)), UuidV7.next()).render();
  }

  @GET
  @Path("/api/players/{player}")
  @Produces(MediaType.APPLICATION_JSON)
  @Transactional
  public Entry json(@PathParam("player") String reference) {
    return entry(own(reference));
  }

  @GET
  @Path("/api/refits")
  @Produces(MediaType.APPLICATION_JSON)
  @Transactional
  public List<RefitCaseRow> refits(@QueryParam("field") String field) {
    return RefitCaseRow.open().stream()
        .filter(row -> caller.mayWorkAt(row.field))
        .filter(row -> field == null || field.isBlank() || row.field.equals(field))
        .toList();
  }

  private PlayerCopy own(String reference) {
    PlayerCopy player =
        PlayerCopy.find(reference)
            .filter(p -> p.field != null)
            .orElseThrow(() -> Problem.notFound("There is no player " + reference + "."));
    if (!caller.mayWorkAt(player.field)) {
      throw new Problem(
          403,
          "other-field",
          "Not your field",
          "You do not work at this player's field.",
          List.of());
    }
    return player;
  }

  private Entry entry(PlayerCopy player) {
    Sideline.Line line = sideline.line(player);
    RefitCaseRow refit = RefitCaseRow.openOf(player.player).orElse(null);
    return new Entry(
        player.player,
        player.number,
        player.name(),
        player.team,
        player.field,
        line.state(),
        line.tag(),
        AdvisedSizeCopy.of(player.player),
        refit,
        refit == null ? null : fitDays.bookingOf(refit.refitCase).orElse(null),
        OpenSession.openOf(player.player).map(s -> s.session).orElse(null));
  }
}
