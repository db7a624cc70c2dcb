package org.tapeline.inventory.label;

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
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.helmet.HelmetViews;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.place.Places.Place;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Choosing helmets, or fresh tags, and printing their labels on the sheet that is there. */
@Path("/labels")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class LabelPage {
  private static final int BEFORE = 10;

  private final Labels labels;
  private final LabelSheets sheets;
  private final LabelPdf pdf;
  private final FreshTags fresh;
  private final Places places;
  private final HelmetViews views;

  LabelPage(
      Labels labels,
      LabelSheets sheets,
      LabelPdf pdf,
      FreshTags fresh,
      Places places,
      HelmetViews views) {
    this.labels = labels;
    this.sheets = sheets;
    this.pdf = pdf;
    this.fresh = fresh;
    this.places = places;
    this.views = views;
  }

  @CheckedTemplate(basePath = "label")
  static class Templates {
    private Templates() {}

    static native TemplateInstance choose(Shown shown);
  }

  /** What can be chosen from. */
  public record Offered(
      List<Place> places,
      List<String> models,
      List<String> sizes,
      List<LabelSheet> sheets,
      List<FreshTags.Before> before) {}

  /** What went wrong in which field; empty for nothing. */
  public record Wrong(String field, String sentence, String typed) {
    static final Wrong NOTHING = new Wrong("", "", "");

    static Wrong of(Problem problem, String otherwise, String typed) {
      String field = problem.errors().isEmpty() ? otherwise : problem.errors().getFirst().field();
      return new Wrong(field, problem.getMessage(), typed);
    }

    public String at(String wanted) {
      return wanted.equals(field) ? sentence : "";
    }
  }

  /** What the page shows. */
  public record Shown(
      Wanted wanted, List<Label> labels, Offered offered, UUID commandId, Wrong wrong) {}

  @GET
  public Response show(
      @QueryParam("place") String place,
      @QueryParam("model") String model,
      @QueryParam("size") String size,
      @QueryParam("state") String state,
      @QueryParam("lot") String lot,
      @QueryParam("tags") String tags,
      @QueryParam("delivery") String delivery) {
    return page(new Wanted(place, model, size, state, lot, tags, delivery), 200, Wrong.NOTHING);
  }

  private Response page(Wanted wanted, int status, Wrong wrong) {
    Offered offered =
        new Offered(
            places.all(), views.models(), views.sizes(), sheets.all(), fresh.before(BEFORE));
    try {
      Shown shown = new Shown(wanted, labels.of(wanted), offered, UuidV7.next(), wrong);
      return Response.status(status).entity(Templates.choose(shown).render()).build();
    } catch (Problem problem) {
      Wrong said = Wrong.of(problem, "tags", "");
      Shown shown = new Shown(wanted, List.of(), offered, UuidV7.next(), said);
      return Response.status(400).entity(Templates.choose(shown).render()).build();
    }
  }

  /**
   * @param start the first label that is still on the first sheet, from 1
   */
  @POST
  @Path("/sheet")
  @Produces({"application/pdf", MediaType.TEXT_HTML})
  public Response sheet(
      @RestForm String place,
      @RestForm String model,
      @RestForm String size,
      @RestForm String state,
      @RestForm String lot,
      @RestForm String tags,
      @RestForm String delivery,
      @RestForm("sheet") String code,
      @RestForm String start) {
    Wanted wanted = new Wanted(place, model, size, state, lot, tags, delivery);
    try {
      List<Label> chosen = labels.of(wanted);
      LabelSheet sheet = sheets.find(code).orElse(sheets.all().getFirst());
      if (chosen.isEmpty()) {
        throw Problem.badRequest("tags", "Choose helmets first: none is chosen.");
      }
      return Response.ok(pdf.of(sheet, chosen, number(start, sheet)), "application/pdf")
          .header("Content-Disposition", "inline; filename=\"labels.pdf\"")
          .build();
    } catch (Problem problem) {
      return html(page(wanted, problem.status(), Wrong.of(problem, "tags", start)));
    }
  }

  private static Response html(Response page) {
    return Response.fromResponse(page).type(MediaType.TEXT_HTML).build();
  }

  private static int number(String start, LabelSheet sheet) {
    int most = sheet.perPage();
    return Optional.ofNullable(start)
        .map(String::strip)
        .filter(s -> s.matches("[0-9]{1,3}"))
        .map(Integer::parseInt)
        .filter(n -> n >= 1 && n <= most)
        .orElseThrow(
            () -> {
              String sentence = "This sheet has labels 1 to " + most + ". Write one of these.";
              return Problem.badRequest(
                  "start", sentence, new Problem.FieldError("start", sentence));
            });
  }

  @POST
  @Path("/fresh")
  public Response reserve(
      @RestForm String commandId,
      @RestForm String count,
      @RestForm String model,
      @RestForm String size) {
    UUID id = CommandId.of(commandId);
    String typed = count == null ? "" : count.strip();
    int many = typed.matches("[0-9]{1,4}") ? Integer.parseInt(typed) : 0;
    try {
      fresh.reserve(new FreshTags.Ask(many, model, size), id);
    } catch (Problem problem) {
      Wanted nothing = new Wanted("", "", "", "", "", "", "");
      return page(nothing, problem.status(), Wrong.of(problem, "count", typed));
    }
    return Answers.goTo("/inventory/labels?delivery=" + id);
  }
}
