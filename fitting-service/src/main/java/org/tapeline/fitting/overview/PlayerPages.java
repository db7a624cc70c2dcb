package org.tapeline.fitting.overview;

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
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.evidence.Evidences;
import org.tapeline.fitting.evidence.HistoryLine;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.recheck.RecheckPlans;
import org.tapeline.fitting.refit.OpenRefits;
import org.tapeline.fitting.refit.RefitView;
import org.tapeline.fitting.roster.AdvisedSizeCopy;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.roster.Words;
import org.tapeline.fitting.session.FitSessionRow;
import org.tapeline.fitting.signoff.Sideline;
import org.tapeline.fitting.signoff.WearState;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** Players with their state, for the fitter; as pages and as JSON. */
@Path("/")
@RolesAllowed({"fitter", "equipment-manager"})
@RunOnVirtualThread
public class PlayerPages {
  private final Sideline sideline;
  private final OpenRefits refits;
  private final Evidences evidences;
  private final RecheckPlans plans;
  private final Caller caller;
  private final Clock clock;

  PlayerPages(
      Sideline sideline,
      OpenRefits refits,
      Evidences evidences,
      RecheckPlans plans,
      Caller caller,
      Clock clock) {
    this.plans = plans;
    this.clock = clock;
    this.evidences = evidences;
    this.sideline = sideline;
    this.refits = refits;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "overview")
  static class Templates {
    private Templates() {}

    static native TemplateInstance players(
        List<PlayerView> players, List<String> teams, String team, String at);

    static native TemplateInstance player(
        PlayerView player,
        List<HistoryLine> history,
        UUID commandId,
        UUID hairCommandId,
        String at);

    static native TemplateInstance state(WearState state, String at);
  }

  @GET
  @Path("/players")
  @Produces(MediaType.TEXT_HTML)
  @Transactional
  public String list(@QueryParam("team") String team) {
    List<PlayerCopy> own =
        PlayerCopy.onRoster().stream().filter(p -> caller.mayWorkAt(p.field)).toList();
    List<String> teams = own.stream().map(p -> p.team).distinct().toList();
    String wanted = team == null ? "" : team;
    List<PlayerCopy> shown =
        own.stream().filter(p -> wanted.isEmpty() || p.team.equals(wanted)).toList();
    String at = shown.isEmpty() ? "" : hour(shown.getFirst().field);
    return Templates.players(views(shown), teams, wanted, at).render();
  }

  @GET
  @Path("/players/{player}")
  @Produces(MediaType.TEXT_HTML)
  @Transactional
  public String one(@PathParam("player") String reference) {
    PlayerCopy player = own(reference);
    return Templates.player(
            views(List.of(player)).getFirst(),
            evidences.historyOf(player.player).stream().map(HistoryLine::of).toList(),
            UuidV7.next(),
            UuidV7.next(),
            hour(player.field))
        .render();
  }

  /** Only the state, for pages that show more. */
  @GET
  @Path("/players/{player}/state")
  @Produces(MediaType.TEXT_HTML)
  @Transactional
  public String state(@PathParam("player") String reference) {
    PlayerCopy player = own(reference);
    return Templates.state(sideline.line(player).state(), hour(player.field)).render();
  }

  private String hour(String field) {
    return Words.time(clock.instant(), Place.zoneOf(field));
  }

  PlayerView json(String reference) {
    return views(List.of(own(reference))).getFirst();
  }

  private PlayerCopy own(String reference) {
    PlayerCopy player = PlayerCopy.known(reference);
    if (!caller.mayWorkAt(player.field) && !comesToOwnField(player)) {
      throw Problem.otherField("You do not work at this player's field.");
    }
    return player;
  }

  /** A re-fit may be booked at the nearest field that has a fit day. */
  private boolean comesToOwnField(PlayerCopy player) {
    boolean booked =
        refits
            .of(player.player)
            .flatMap(RefitView::booking)
            .filter(b -> caller.mayWorkAt(b.field()))
            .isPresent();
    return booked
        || FitSessionRow.openOf(player.player).filter(s -> caller.mayWorkAt(s.field)).isPresent();
  }

  private List<PlayerView> views(List<PlayerCopy> players) {
    List<Sideline.Looked> looked = sideline.looked(players);
    List<PlayerView> views = new ArrayList<>();
    for (int i = 0; i < players.size(); i++) {
      views.add(view(players.get(i), looked.get(i)));
    }
    return views;
  }

  private PlayerView view(PlayerCopy player, Sideline.Looked looked) {
    Sideline.Line line = looked.line();
    Optional<UUID> session = FitSessionRow.openOf(player.player).map(s -> s.session);
    return new PlayerView(
        player.player,
        player.number,
        player.name(),
        player.team,
        player.field,
        line.state(),
        line.tag(),
        RecheckWords.of(looked, plans.inForce(), clock.instant(), Place.zoneOf(player.field)),
        AdvisedSizeCopy.of(player.player).stream().map(PlayerView.Advice::of).toList(),
        refits.of(player.player),
        session,
        clock.instant());
  }
}
