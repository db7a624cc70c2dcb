package org.tapeline.sizing.mix;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.quarkus.file.CsvAnswer;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.sizing.mix.Forecasts.Question;

/** The size mix for programs and spreadsheets. */
@Path("/api/size-mix")
@RolesAllowed({"warehouse", "equipment-manager"})
@RunOnVirtualThread
public class SizeMixResource {
  private static final List<String> HEADER =
      List.of(
          "model",
          "size",
          "day",
          "expected",
          "low_5",
          "high_95",
          "usable",
          "order",
          "money_at_risk");

  private final Forecasts forecasts;

  SizeMixResource(Forecasts forecasts) {
    this.forecasts = forecasts;
  }

  @GET
  @Transactional
  @Produces(MediaType.APPLICATION_JSON)
  public List<Forecast> json(
      @QueryParam("day") LocalDate day,
      @QueryParam("tooFew") Double tooFew,
      @QueryParam("tooMany") Double tooMany) {
    return forecasts.of(new Question(day, tooFew, tooMany));
  }

  @GET
  @Path("/csv")
  @Transactional
  @Produces("text/csv; charset=utf-8")
  public Response csv(
      @QueryParam("day") LocalDate day,
      @QueryParam("tooFew") Double tooFew,
      @QueryParam("tooMany") Double tooMany) {
    List<List<?>> rows = new ArrayList<>();
    for (Forecast f : forecasts.of(new Question(day, tooFew, tooMany))) {
      f.sizes().forEach(s -> rows.add(cells(f, s)));
    }
    return Response.ok(CsvAnswer.text(HEADER, rows))
        .header("Content-Disposition", "attachment; filename=\"size-mix.csv\"")
        .build();
  }

  private static List<?> cells(Forecast f, Forecast.Size s) {
    return Arrays.asList(
        f.model(),
        s.size(),
        f.day(),
        Math.round(s.expected() * 10) / 10.0,
        s.low(),
        s.high(),
        s.usable(),
        s.order(),
        Math.round(s.atRisk()));
  }

  @POST
  @Path("/{model}/publish")
  @RolesAllowed("equipment-manager")
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  public Response publish(
      @PathParam("model") String model,
      @HeaderParam(CommandId.HEADER) String commandId,
      Question question) {
    UUID id = CommandId.of(commandId);
    Question asked = question == null ? new Question(null, null, null) : question;
    return Answers.of(id, forecasts.publish(id, model, asked));
  }
}
