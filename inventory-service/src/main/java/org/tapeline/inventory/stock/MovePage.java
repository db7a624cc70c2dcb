package org.tapeline.inventory.stock;

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
import java.util.TreeSet;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.compat.CompatibilityTable;
import org.tapeline.inventory.compat.PartCompatibility;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.Words;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.place.Places.Place;
import org.tapeline.inventory.stock.HandMoves.Asked;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Moving parts by hand. */
@Path("/stock/move")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class MovePage {
  private final HandMoves moves;
  private final StockPolicyFile policy;
  private final CompatibilityTable compatibility;
  private final Places places;
  private final Database database;

  MovePage(
      HandMoves moves,
      StockPolicyFile policy,
      CompatibilityTable compatibility,
      Places places,
      Database database) {
    this.moves = moves;
    this.policy = policy;
    this.compatibility = compatibility;
    this.places = places;
    this.database = database;
  }

  @CheckedTemplate(basePath = "stock")
  static class Templates {
    private Templates() {}

    static native TemplateInstance move(
        List<Place> places,
        List<Part> parts,
        List<StockPolicy.Reason> reasons,
        Typed typed,
        UUID commandId,
        String wrong);
  }

  /**
   * A part of which there is stock, or that the compatibility table lists.
   *
   * @param value item and model with a bar between
   */
  public record Part(String value, String said) implements Comparable<Part> {
    static Part of(String item, String model) {
      String kept = model.isEmpty() ? "any model" : Words.model(model);
      return new Part(item + "|" + model, Words.code(item) + ", " + kept);
    }

    @Override
    public int compareTo(Part other) {
      return value.compareTo(other.value);
    }
  }

  /** The form as it was filled in, with what is wrong about it. */
  public record Typed(
      String from,
      String to,
      String part,
      String quantity,
      String reason,
      List<FieldError> errors) {

    static Typed of(String from, String to, String part, String quantity, String reason) {
      return new Typed(text(from), text(to), text(part), text(quantity), text(reason), List.of());
    }

    private static String text(String said) {
      return said == null ? "" : said.strip();
    }

    /** What is wrong with that field; empty when nothing is. */
    public String error(String field) {
      return errors.stream()
          .filter(e -> e.field().equals(field))
          .map(FieldError::message)
          .findFirst()
          .orElse("");
    }

    Asked asked() {
      String[] both = part.split("\\|", 2);
      int pieces = quantity.matches("[0-9]{1,6}") ? Integer.parseInt(quantity) : 0;
      return new Asked(from, to, both[0], both.length > 1 ? both[1] : "", pieces, reason);
    }

    Typed with(List<FieldError> wrong) {
      return new Typed(from, to, part, quantity, reason, wrong);
    }
  }

  @GET
  public String show(@QueryParam("from") String from, @QueryParam("part") String part) {
    return page(Typed.of(from, "", part, "1", ""), "");
  }

  @POST
  public Response move(
      @RestForm String commandId,
      @RestForm String from,
      @RestForm String to,
      @RestForm String part,
      @RestForm String quantity,
      @RestForm String reason) {
    Typed typed = Typed.of(from, to, part, quantity, reason);
    Asked asked = typed.asked();
    try {
      moves.move(asked, CommandId.of(commandId));
      String place = places.exists(asked.from()) ? asked.from() : asked.to();
      return Answers.goTo(
          "/inventory/stock/ledger?place=" + place + "&item=" + asked.item() + "&model=*");
    } catch (Problem problem) {
      return Response.status(problem.status())
          .entity(page(typed.with(problem.errors()), problem.getMessage()))
          .build();
    }
  }

  private String page(Typed typed, String wrong) {
    return Templates.move(
            places.all(),
            List.copyOf(parts()),
            policy.inForce().moveReasons(),
            typed,
            UuidV7.next(),
            wrong)
        .render();
  }

  private TreeSet<Part> parts() {
    TreeSet<Part> parts =
        new TreeSet<>(
            database.list(
                "select distinct item, model from ledger_entry",
                row -> Part.of(row.getString(1), row.getString(2))));
    for (PartCompatibility.Part part : compatibility.inForce().parts()) {
      if (part.acrossModels()) {
        parts.add(Part.of(part.item(), Shelf.ANY));
      } else {
        part.fits().forEach(model -> parts.add(Part.of(part.item(), model)));
      }
    }
    return parts;
  }
}
