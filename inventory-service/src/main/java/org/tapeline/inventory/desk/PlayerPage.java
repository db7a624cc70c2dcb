package org.tapeline.inventory.desk;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.reservation.CaseFacts;
import org.tapeline.inventory.roster.PlayerFields;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** A player as inventory knows one: a number, a field, a helmet and re-fits; no name. */
@Path("/players/{player}")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class PlayerPage {
  private final PlayerHelmets helmets;
  private final CaseFacts cases;
  private final PlayerFields fields;
  private final Caller caller;

  PlayerPage(PlayerHelmets helmets, CaseFacts cases, PlayerFields fields, Caller caller) {
    this.helmets = helmets;
    this.cases = cases;
    this.fields = fields;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "desk")
  static class Templates {
    private Templates() {}

    static native TemplateInstance player(
        UUID player, String field, List<PlayerHelmets.Has> helmets, List<CaseFacts.Facts> cases);
  }

  @GET
  public String show(@PathParam("player") UUID player) {
    Optional<String> field = fields.fieldOf(player);
    boolean own = caller.worksAs("warehouse") || field.filter(caller::mayWorkAt).isPresent();
    if (!own && field.isPresent()) {
      throw Problem.otherField("This player is fitted at a field that is not yours.");
    }
    List<PlayerHelmets.Has> has = helmets.of(List.of(player));
    List<CaseFacts.Facts> refits = own ? cases.ofPlayer(player) : List.of();
    if (field.isEmpty() && has.isEmpty() && refits.isEmpty()) {
      throw Problem.notFound("No player of this number is known here.");
    }
    return Templates.player(player, field.orElse(""), has, refits).render();
  }
}
