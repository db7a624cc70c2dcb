package org.tapeline.fitting.refit;

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
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.fitting.access.Caller;
import org.tapeline.fitting.access.CommandId;
import org.tapeline.fitting.fitday.FitDayDesk;
import org.tapeline.fitting.fitday.FitDayResource;
import org.tapeline.fitting.fitday.FitDayView;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.problem.Problem;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;

/** Coming fit days with whom they are booked for, and the form to announce one. */
@Path("/fit-days")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class FitDayPage {
  private final FitDayDesk desk;
  private final FitDayResource days;
  private final Caller caller;
  private final Transactions transactions;

  FitDayPage(FitDayDesk desk, FitDayResource days, Caller caller, Transactions transactions) {
    this.desk = desk;
    this.days = days;
    this.caller = caller;
    this.transactions = transactions;
  }

  @CheckedTemplate(basePath = "fitday")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(
        List<Day> days, List<Place> fields, Form form, UUID commandId);
  }

  /** A fit day with the players of its bookings. */
  public record Day(FitDayView view, List<Booked> booked) {}

  /** Who comes when. */
  public record Booked(String from, UUID player, String name, String why) {}

  /** What was typed, and what is wrong with it. */
  public record Form(Map<String, String> typed, Map<String, String> errors, String problem) {
    static final Form EMPTY = new Form(Map.of(), Map.of(), "");

    public String value(String field) {
      return typed.getOrDefault(field, "");
    }

    public String error(String field) {
      return errors.getOrDefault(field, "");
    }
  }

  @GET
  public String show() {
    return page(Form.EMPTY);
  }

  private String page(Form form) {
    return transactions.required(
        c -> {
          List<Day> shown = days.coming().stream().map(FitDayPage::day).toList();
          List<Place> fields =
              Place.fields().stream().filter(p -> caller.mayWorkAt(p.code)).toList();
          return Templates.list(shown, fields, form, UuidV7.next()).render();
        });
  }

  private static Day day(FitDayView view) {
    return new Day(
        view,
        view.booked().stream()
            .map(
                slot -> {
                  RefitCaseRow refit = RefitCaseRow.findById(slot.refitCase());
                  PlayerCopy player = PlayerCopy.findById(refit.player);
                  String name = player == null ? "erased" : player.name();
                  return new Booked(slot.from(), refit.player, name, refit.why.replace('-', ' '));
                })
            .toList());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response announce(
      @RestForm String commandId,
      @RestForm String field,
      @RestForm String date,
      @RestForm String opens,
      @RestForm String closes,
      @RestForm String fitters) {
    UUID id = CommandId.of(commandId);
    Integer count = fitters != null && fitters.matches("[0-9]{1,3}") ? Integer.valueOf(fitters) : 0;
    try {
      desk.announce(id, new FitDayDesk.FitDayBody(field, date, opens, closes, count, null));
      return Response.seeOther(URI.create("/fitting/fit-days")).build();
    } catch (Problem problem) {
      Map<String, String> errors = new TreeMap<>();
      problem.errors().forEach(e -> errors.put(e.field(), e.message()));
      Map<String, String> typed = new TreeMap<>();
      put(typed, "field", field);
      put(typed, "date", date);
      put(typed, "opens", opens);
      put(typed, "closes", closes);
      put(typed, "fitters", fitters);
      Form form = new Form(typed, errors, problem.getMessage());
      return Response.status(problem.status()).entity(page(form)).build();
    }
  }

  @POST
  @Path("/{fitDay}/cancel")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response cancel(@PathParam("fitDay") UUID fitDay, @RestForm String commandId) {
    desk.cancel(CommandId.of(commandId), fitDay);
    return Response.seeOther(URI.create("/fitting/fit-days")).build();
  }

  private static void put(Map<String, String> typed, String field, String value) {
    if (value != null) {
      typed.put(field, value);
    }
  }
}
