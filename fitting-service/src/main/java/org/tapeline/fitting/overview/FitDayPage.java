package org.tapeline.fitting.overview;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.BeanParam;
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
import java.util.function.BiConsumer;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.fitting.fitday.FitDayBody;
import org.tapeline.fitting.fitday.FitDayDesk;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Coming fit days with whom they are booked for; announces, moves and cancels them. */
@Path("/fit-days")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class FitDayPage {
  private final FitDayDesk desk;
  private final FitDayScreen screen;

  FitDayPage(FitDayDesk desk, FitDayScreen screen) {
    this.desk = desk;
    this.screen = screen;
  }

  @GET
  public String show() {
    return screen.page(Optional.empty());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response announce(@BeanParam FitDayEntries entries) {
    return tried("new", entries, desk::announce);
  }

  @POST
  @Path("/{fitDay}/move")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response move(@PathParam("fitDay") UUID fitDay, @BeanParam FitDayEntries entries) {
    return tried(fitDay.toString(), entries, (id, body) -> desk.move(id, fitDay, body));
  }

  @POST
  @Path("/{fitDay}/cancel")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response cancel(@PathParam("fitDay") UUID fitDay, @RestForm String commandId) {
    desk.cancel(CommandId.of(commandId), fitDay);
    return Answers.goTo("/fitting/fit-days");
  }

  private Response tried(String form, FitDayEntries entries, BiConsumer<UUID, FitDayBody> command) {
    UUID id = CommandId.of(entries.commandId);
    FitDayForm typed = FitDayForm.of(form, UuidV7.next(), entries.typed());
    try {
      command.accept(id, typed.body());
      return Answers.goTo("/fitting/fit-days");
    } catch (Problem problem) {
      String page = screen.page(Optional.of(typed.refused(problem)));
      return Response.status(problem.status()).entity(page).build();
    }
  }
}
