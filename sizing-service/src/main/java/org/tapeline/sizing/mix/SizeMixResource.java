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
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.sizing.mix.Forecasts.Question;

/** The size mix for programs and spreadsheets. */
@Path("/api/size-mix")
@RolesAllowed({"warehouse", "equipment-manager"})
@RunOnVirtualThread
public class SizeMixResource {
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
    StringBuilder csv = new StringBuilder();
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader(
                "model",
                "size",
                "day",
                "expected",
                "low_5",
                "high_95",
                "usable",
                "order",
                "money_at_risk")
            .get();
    try (CSVPrinter rows = new CSVPrinter(csv, format)) {
      for (Forecast f : forecasts.of(new Question(day, tooFew, tooMany))) {
        for (Forecast.Size s : f.sizes()) {
          rows.printRecord(
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
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Response.ok(csv.toString())
        .header("Content-Disposition", "attachment; filename=\"size-mix.csv\"")
        .build();
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
