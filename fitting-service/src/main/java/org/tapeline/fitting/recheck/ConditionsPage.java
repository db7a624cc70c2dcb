package org.tapeline.fitting.recheck;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.roster.Words;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** How warm it is at the fields, and the form to say so. */
@Path("/conditions")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class ConditionsPage {
  private final ConditionsDesk desk;
  private final RecheckPlans plans;
  private final Caller caller;
  private final Transactions transactions;
  private final Clock clock;

  ConditionsPage(
      ConditionsDesk desk,
      RecheckPlans plans,
      Caller caller,
      Transactions transactions,
      Clock clock) {
    this.desk = desk;
    this.plans = plans;
    this.caller = caller;
    this.transactions = transactions;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "recheck")
  static class Templates {
    private Templates() {}

    static native TemplateInstance conditions(
        List<AtField> fields, Form form, int holdHours, UUID commandId);
  }

  /**
   * A field with what is known of it.
   *
   * @param said such as {@code 4 °C at 5:30 PM}; says so when it is not known or too old
   */
  public record AtField(String code, String name, String said, long altitudeM) {}

  /** What was typed, and what is wrong with it. */
  public record Form(Map<String, String> typed, Map<String, String> errors, String problem) {
    static final Form EMPTY = new Form(Map.of("unit", "F"), Map.of(), "");

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

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response record(
      @RestForm String commandId,
      @RestForm String field,
      @RestForm String air,
      @RestForm String unit) {
    UUID id = CommandId.of(commandId);
    try {
      desk.record(id, new ConditionsDesk.Told(field, air, unit, ""));
      return Answers.goTo("/fitting/conditions");
    } catch (Problem problem) {
      Map<String, String> errors = new TreeMap<>();
      problem.errors().forEach(e -> errors.put(e.field(), e.message()));
      Map<String, String> typed = new TreeMap<>();
      typed.put("field", field == null ? "" : field);
      typed.put("air", air == null ? "" : air);
      typed.put("unit", unit == null ? "" : unit);
      Form form = new Form(typed, errors, problem.getMessage());
      return Response.status(problem.status()).entity(page(form)).build();
    }
  }

  private String page(Form form) {
    return transactions.required(
        c -> {
          List<AtField> fields =
              Place.fields().stream()
                  .filter(p -> caller.mayWorkAt(p.code))
                  .map(this::atField)
                  .toList();
          int hours = plans.inForce().conditionsHoldHours();
          return Templates.conditions(fields, form, hours, UuidV7.next()).render();
        });
  }

  private AtField atField(Place place) {
    Instant counts = clock.instant().minus(plans.inForce().conditionsHold());
    Optional<FieldConditionsRow> row = FieldConditionsRow.findByIdOptional(place.code);
    ZoneId zone = ZoneId.of(place.zone);
    String said =
        row.map(
                r ->
                    AirWords.celsius(r.airCelsius)
                        + " on "
                        + Words.day(r.measuredAt, zone)
                        + ", "
                        + Words.time(r.measuredAt, zone)
                        + (r.measuredAt.isBefore(counts) ? ": too old to count" : ""))
            .orElse("not known");
    return new AtField(place.code, place.name, said, Math.round(place.altitudeM));
  }
}
