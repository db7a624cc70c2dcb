package org.tapeline.fitting.overview;

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
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.fitting.fitday.FitDayDesk;
import org.tapeline.fitting.fitday.FitDayResource;
import org.tapeline.fitting.fitday.FitDayView;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.refit.OpenRefits;
import org.tapeline.fitting.refit.RefitView;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Coming fit days with whom they are booked for, and the form to announce one. */
@Path("/fit-days")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class FitDayPage {
  private final FitDayDesk desk;
  private final FitDayResource days;
  private final OpenRefits refits;
  private final Caller caller;
  private final Transactions transactions;

  FitDayPage(
      FitDayDesk desk,
      FitDayResource days,
      OpenRefits refits,
      Caller caller,
      Transactions transactions) {
    this.desk = desk;
    this.days = days;
    this.refits = refits;
    this.caller = caller;
    this.transactions = transactions;
  }

  @CheckedTemplate(basePath = "overview")
  static class Templates {
    private Templates() {}

    static native TemplateInstance fitdays(
        List<Day> days, List<Place> fields, Form form, UUID commandId);
  }

  /** A fit day with the players of its bookings. */
  public record Day(FitDayView view, List<Booked> booked, UUID cancelId) {}

  /** Who comes when. */
  public record Booked(String from, UUID player, String name, String why) {}

  /** What was typed, and what is wrong with it. */
  public record Form(Map<String, String> typed, Map<String, String> errors, String problem) {
    static final Form EMPTY = new Form(Map.of("fitters", "2", "minutesPerFit", "15"), Map.of(), "");

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
          List<Day> shown = days.coming().stream().map(this::day).toList();
          List<Place> fields =
              Place.fields().stream().filter(p -> caller.mayWorkAt(p.code)).toList();
          return Templates.fitdays(shown, fields, form, UuidV7.next()).render();
        });
  }

  private Day day(FitDayView view) {
    return new Day(
        view,
        view.booked().stream()
            .flatMap(slot -> refits.byId(slot.refitCase()).map(c -> booked(slot, c)).stream())
            .toList(),
        UuidV7.next());
  }

  private static Booked booked(FitDayView.Slot slot, RefitView refit) {
    PlayerCopy player = PlayerCopy.findById(refit.player());
    return new Booked(
        slot.fromSaid(),
        refit.player(),
        player == null ? "erased" : player.name(),
        refit.whySaid() + "; needs " + refit.needsSaid());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response announce(
      @RestForm String commandId,
      @RestForm String field,
      @RestForm String date,
      @RestForm String opens,
      @RestForm String closes,
      @RestForm String fitters,
      @RestForm String minutesPerFit) {
    UUID id = CommandId.of(commandId);
    try {
      desk.announce(
          id,
          new FitDayDesk.FitDayBody(
              field, date, opens, closes, number(fitters), number(minutesPerFit)));
      return Answers.goTo("/fitting/fit-days");
    } catch (Problem problem) {
      Map<String, String> errors = new TreeMap<>();
      problem.errors().forEach(e -> errors.put(e.field(), e.message()));
      Map<String, String> typed = new TreeMap<>();
      put(typed, "field", field);
      put(typed, "date", date);
      put(typed, "opens", opens);
      put(typed, "closes", closes);
      put(typed, "fitters", fitters);
      put(typed, "minutesPerFit", minutesPerFit);
      Form form = new Form(typed, errors, problem.getMessage());
      return Response.status(problem.status()).entity(page(form)).build();
    }
  }

  @POST
  @Path("/{fitDay}/cancel")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response cancel(@PathParam("fitDay") UUID fitDay, @RestForm String commandId) {
    desk.cancel(CommandId.of(commandId), fitDay);
    return Answers.goTo("/fitting/fit-days");
  }

  /** What is no number is one that the rules refuse. */
  private static Integer number(String typed) {
    return typed != null && typed.matches("[0-9]{1,3}") ? Integer.valueOf(typed) : 0;
  }

  private static void put(Map<String, String> typed, String field, String value) {
    if (value != null) {
      typed.put(field, value);
    }
  }
}
