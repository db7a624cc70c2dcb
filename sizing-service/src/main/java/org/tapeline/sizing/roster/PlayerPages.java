package org.tapeline.sizing.roster;

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
import org.tapeline.sizing.access.Caller;
import org.tapeline.sizing.problem.Problem;

/** Players to measure, and one player with all readings. */
@Path("/players")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class PlayerPages {
  private final Caller caller;
  private final Players players;

  PlayerPages(Caller caller, Players players) {
    this.caller = caller;
    this.players = players;
  }

  @CheckedTemplate(basePath = "roster")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(
        List<PlayerView> players, List<String> teams, String team, String words);

    static native TemplateInstance one(PlayerView player, List<HeadRow> heads);
  }

  @GET
  @Transactional
  public TemplateInstance list(@QueryParam("team") String team, @QueryParam("q") String words) {
    String wanted = team == null ? "" : team;
    String search = words == null ? "" : words.strip();
    List<PlayerRow> own =
        PlayerRow.search("", "", "").stream().filter(p -> caller.mayWorkAt(p.field)).toList();
    List<String> teams = own.stream().map(p -> p.team).distinct().sorted().toList();
    List<PlayerView> shown =
        PlayerRow.search("", wanted, search).stream()
            .filter(p -> caller.mayWorkAt(p.field))
            .map(PlayerView::of)
            .toList();
    return Templates.list(shown, teams, wanted, search);
  }

  @GET
  @Path("/{player}")
  @Transactional
  public TemplateInstance one(@PathParam("player") String reference) {
    PlayerRow row = PlayerView.existing(players, reference);
    if (!caller.mayWorkAt(row.field)) {
      throw new Problem(
          403,
          "other-field",
          "Not your field",
          "You do not work at this player's field.",
          List.of());
    }
    return Templates.one(PlayerView.of(row), HeadRow.of(row.player));
  }
}
