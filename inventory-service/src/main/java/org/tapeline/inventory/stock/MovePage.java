package org.tapeline.inventory.stock;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.place.Places.Place;
import org.tapeline.inventory.stock.HandMoves.Asked;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Moving parts by hand. */
@Path("/stock/move")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class MovePage {
  private final HandMoves moves;
  private final StockPolicyFile policy;
  private final PartList parts;
  private final Places places;

  MovePage(HandMoves moves, StockPolicyFile policy, PartList parts, Places places) {
    this.moves = moves;
    this.policy = policy;
    this.parts = parts;
    this.places = places;
  }

  @CheckedTemplate(basePath = "stock")
  static class Templates {
    private Templates() {}

    static native TemplateInstance move(
        List<Place> places,
        List<PartList.Part> parts,
        List<StockPolicy.Reason> reasons,
        MoveForm typed,
        UUID commandId,
        String wrong);
  }

  @GET
  public String show(@QueryParam("from") String from, @QueryParam("part") String part) {
    return page(MoveForm.of(from, "", part, "1", ""), "");
  }

  @POST
  public Response move(
      @RestForm String commandId,
      @RestForm String from,
      @RestForm String to,
      @RestForm String part,
      @RestForm String quantity,
      @RestForm String reason) {
    MoveForm typed = MoveForm.of(from, to, part, quantity, reason);
    Asked asked = typed.asked();
    try {
      moves.move(asked, CommandId.of(commandId));
      String place = places.exists(asked.from()) ? asked.from() : asked.to();
      return Answers.goTo(
          "/inventory/stock/ledger?place=" + place + "&item=" + asked.item() + "&model=*");
    } catch (Problem problem) {
      return Response.status(problem.status())
          .entity(page(typed.with(problem.errors()), problem.getMessage()))
          .build();
    }
  }

  private String page(MoveForm typed, String wrong) {
    return Templates.move(
            places.all(), parts.all(), policy.inForce().moveReasons(), typed, UuidV7.next(), wrong)
        .render();
  }
}
