package org.tapeline.inventory.helmet;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.helmet.HelmetWork.Label;
import org.tapeline.inventory.helmet.HelmetWork.To;
import org.tapeline.inventory.helmet.HelmetWork.Why;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.MeantDay;
import org.tapeline.journal.quarkus.http.Problem;

/** One helmet with its life, and what the warehouse does with it. */
@Path("/helmets")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class HelmetPage {
  private final HelmetAccess access;
  private final HelmetSheets sheets;
  private final HelmetWork work;
  private final Caller caller;

  HelmetPage(HelmetAccess access, HelmetSheets sheets, HelmetWork work, Caller caller) {
    this.access = access;
    this.sheets = sheets;
    this.work = work;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "helmet")
  static class Templates {
    private Templates() {}

    static native TemplateInstance one(HelmetSheet sheet, HelmetForm form, boolean works);
  }

  @GET
  @Path("/{tag}")
  public String one(@PathParam("tag") String tag) {
    return show(tag, HelmetForm.BLANK);
  }

  private String show(String tag, HelmetForm form) {
    return Templates.one(sheets.of(access.see(tag)), form, caller.worksAs("warehouse")).render();
  }

  /**
   * @param step which of the forms it is
   * @param value its one field: a day, a place's code or a reason
   */
  @POST
  @Path("/{tag}/{step:certification|return|move|retire}")
  @RolesAllowed({"equipment-manager", "warehouse"})
  public Response work(
      @PathParam("tag") String tag,
      @PathParam("step") String step,
      @RestForm String commandId,
      @RestForm String value) {
    String known = access.see(tag).tag();
    String typed = value == null ? "" : value.strip();
    try {
      does(known, step, typed, CommandId.of(commandId));
    } catch (Problem problem) {
      String said =
          problem.errors().isEmpty() ? problem.getMessage() : problem.errors().getFirst().message();
      HelmetForm form = new HelmetForm(step, typed, said);
      return Response.status(problem.status()).entity(show(known, form)).build();
    }
    return Answers.goTo("/inventory/helmets/" + known);
  }

  private void does(String tag, String step, String value, UUID id) {
    switch (step) {
      case "certification" -> work.recertify(tag, new Label(day(value)), id);
      case "return" -> work.giveBack(tag, new To(value), id);
      case "move" -> work.move(tag, new To(value), id);
      default -> work.retire(tag, new Why(value), id);
    }
  }

  /** What is no day is none: the answer says how a day is written. */
  private static LocalDate day(String typed) {
    try {
      return MeantDay.parse(typed);
    } catch (DateTimeException e) {
      return null;
    }
  }
}
