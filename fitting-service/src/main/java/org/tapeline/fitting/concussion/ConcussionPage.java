package org.tapeline.fitting.concussion;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Taking a player out of play, and confirming that the return was cleared. */
@Path("/concussion/{player}")
@RolesAllowed({"coach", "fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class ConcussionPage {
  private final ConcussionDesk desk;
  private final Transactions transactions;

  ConcussionPage(ConcussionDesk desk, Transactions transactions) {
    this.desk = desk;
    this.transactions = transactions;
  }

  @CheckedTemplate(basePath = "concussion")
  static class Templates {
    private Templates() {}

    static native TemplateInstance page(Shown shown);
  }

  /**
   * What the page shows.
   *
   * @param tag the helmet that goes to inspection, or what was typed
   * @param problem what is wrong; empty for nothing
   * @param problemField the entry that it is about
   */
  public record Shown(
      UUID player,
      String name,
      String number,
      String team,
      boolean outOfPlay,
      boolean mayClear,
      String tag,
      UUID commandId,
      String problem,
      String problemField) {}

  @GET
  public String show(@PathParam("player") String player) {
    return page(player, Optional.empty(), "", "");
  }

  @POST
  @Path("/suspected")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response suspect(
      @PathParam("player") String player, @RestForm String commandId, @RestForm String tag) {
    UUID id = CommandId.of(commandId);
    Optional<String> typed = Optional.ofNullable(tag);
    return then(player, typed, () -> desk.suspect(id, new ConcussionDesk.Suspected(player, typed)));
  }

  @POST
  @Path("/cleared")
  @RolesAllowed({"fitter", "equipment-manager"})
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response clear(
      @PathParam("player") String player, @RestForm String commandId, @RestForm String confirmed) {
    UUID id = CommandId.of(commandId);
    return then(
        player,
        Optional.empty(),
        () -> desk.clear(id, player, new ConcussionDesk.Cleared("yes".equals(confirmed))));
  }

  private Response then(String player, Optional<String> typed, Supplier<Answer> command) {
    try {
      command.get();
      return Answers.goTo("/fitting/concussion/" + player);
    } catch (Problem problem) {
      if (problem.status() == 403 || problem.status() == 404) {
        throw problem;
      }
      String field = problem.errors().isEmpty() ? "" : problem.errors().getFirst().field();
      return Response.status(problem.status())
          .entity(page(player, typed, problem.getMessage(), field))
          .build();
    }
  }

  private String page(String reference, Optional<String> typed, String problem, String field) {
    return transactions.required(
        c -> {
          PlayerCopy player = desk.seen(reference);
          String tag = typed.or(() -> desk.worn(player.player, Optional.empty())).orElse("");
          return Templates.page(
                  new Shown(
                      player.player,
                      player.name(),
                      player.number == null ? "" : player.number,
                      player.team,
                      desk.outOfPlay(player),
                      desk.mayClear(player),
                      tag,
                      UuidV7.next(),
                      problem,
                      field))
              .render();
        });
  }
}
