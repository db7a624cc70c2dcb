package org.tapeline.sizing.mix;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.MeantDay;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.sizing.mix.Forecasts.Question;

/** What to order for the season, with what is not known drawn beside it. */
@Path("/size-mix")
@RolesAllowed({"warehouse", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class SizeMixPage {
  private final Forecasts forecasts;
  private final Clock clock;

  SizeMixPage(Forecasts forecasts, Clock clock) {
    this.forecasts = forecasts;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "mix")
  static class Templates {
    private Templates() {}

    static native TemplateInstance show(Form form, List<MixPicture> pictures, UUID commandId);
  }

  /**
   * What was asked, as typed.
   *
   * @param problem what is wrong with it; empty when nothing is
   * @param said was published; the model, or empty
   */
  public record Form(String day, String tooFew, String tooMany, String problem, String said) {
    String query() {
      return "day=" + day + "&tooFew=" + tooFew + "&tooMany=" + tooMany;
    }

    Question question() {
      try {
        return new Question(
            MeantDay.parse(day), Double.valueOf(tooFew.strip()), Double.valueOf(tooMany.strip()));
      } catch (DateTimeException e) {
        throw Problem.badRequest("day", "Choose a day, such as 2027-08-01.");
      } catch (NumberFormatException e) {
        throw Problem.badRequest("cost", "Write the two amounts as numbers, such as 100 and 40.");
      }
    }

    Form wrong(String what) {
      return new Form(day, tooFew, tooMany, what, "");
    }
  }

  @GET
  @Transactional
  public Response show(
      @QueryParam("day") String day,
      @QueryParam("tooFew") String tooFew,
      @QueryParam("tooMany") String tooMany,
      @QueryParam("published") String published) {
    Form form = form(day, tooFew, tooMany, published);
    try {
      List<MixPicture> pictures =
          forecasts.of(form.question()).stream().map(MixPicture::of).toList();
      return Response.ok(Templates.show(form, pictures, UuidV7.next()).render()).build();
    } catch (Problem problem) {
      return Response.status(problem.status())
          .entity(
              Templates.show(form.wrong(problem.getMessage()), List.of(), UuidV7.next()).render())
          .build();
    }
  }

  @POST
  @Path("/{model}/publish")
  @RolesAllowed("equipment-manager")
  public Response publish(
      @PathParam("model") String model,
      @RestForm String commandId,
      @RestForm String day,
      @RestForm String tooFew,
      @RestForm String tooMany) {
    Form form = form(day, tooFew, tooMany, model);
    forecasts.publish(CommandId.of(commandId), model, form.question());
    return Response.status(Response.Status.SEE_OTHER)
        .header(HttpHeaders.LOCATION, "/sizing/size-mix?" + form.query() + "&published=" + model)
        .build();
  }

  private Form form(String day, String tooFew, String tooMany, String published) {
    return new Form(
        or(day, LocalDate.now(clock).toString()),
        or(tooFew, "100"),
        or(tooMany, "40"),
        "",
        or(published, ""));
  }

  private static String or(String typed, String otherwise) {
    return typed == null || typed.isBlank() ? otherwise : typed;
  }
}
