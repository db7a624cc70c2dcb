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

/** Players to measure, and one player with all readings. */
@Path("/players")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class PlayerPages {
  /** More are not read on a page; a search finds them. */
  private static final int SHOWN = 100;

  private final OwnPlayers own;

  PlayerPages(OwnPlayers own) {
    this.own = own;
  }

  @CheckedTemplate(basePath = "roster")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(
        List<PlayerView> players, boolean more, List<String> teams, String team, String words);

    static native TemplateInstance one(
        PlayerView player, List<HeadLine> heads, List<CorrectionRow> withdrawn, boolean measured);
  }

  @GET
  @Transactional
  public TemplateInstance list(@QueryParam("team") String team, @QueryParam("q") String words) {
    List<PlayerView> found = own.search("", team, words, SHOWN + 1);
    boolean more = found.size() > SHOWN;
    return Templates.list(
        more ? found.subList(0, SHOWN) : found,
        more,
        own.teams(),
        team == null ? "" : team,
        words == null ? "" : words.strip());
  }

  @GET
  @Path("/{player}")
  @Transactional
  public TemplateInstance one(
      @PathParam("player") String reference, @QueryParam("measured") String measured) {
    PlayerView player = own.one(reference);
    return Templates.one(
        player,
        HeadLine.of(HeadRow.of(player.player())),
        CorrectionRow.withdrawn(player.player()),
        measured != null);
  }
}
