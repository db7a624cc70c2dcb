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
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.helmet.Receiving.Progress;
import org.tapeline.inventory.helmet.Receiving.Summary;
import org.tapeline.inventory.helmet.TagText.Slip;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.place.Places.Place;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Taking in a delivery: say once what all have in common, then scan tag after tag. */
@Path("/receive")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class ReceivePage {
  private static final int LAST = 10;

  private final ReceiveDesk desk;
  private final Receivings receivings;
  private final TagReading reading;
  private final Places places;
  private final HelmetViews views;

  ReceivePage(
      ReceiveDesk desk,
      Receivings receivings,
      TagReading reading,
      Places places,
      HelmetViews views) {
    this.desk = desk;
    this.receivings = receivings;
    this.reading = reading;
    this.places = places;
    this.views = views;
  }

  @CheckedTemplate(basePath = "helmet")
  static class Templates {
    private Templates() {}

    static native TemplateInstance delivery(
        DeliveryForm form, Wrong wrong, Offered offered, UUID commandId);

    static native TemplateInstance receive(Progress progress, Scanned scanned);
  }

  /** What can be chosen from, and the deliveries that were begun last. */
  public record Offered(
      List<Place> places, List<String> models, List<String> sizes, List<Summary> last) {}

  /** What is wrong at which field. */
  public record Wrong(List<FieldError> errors) {
    /** Empty when nothing is. */
    public String at(String field) {
      return errors.stream()
          .filter(e -> e.field().equals(field))
          .map(FieldError::message)
          .findFirst()
          .orElse("");
    }
  }

  /**
   * What was scanned last and not taken.
   *
   * @param near tags that may have been meant: expected ones, else those like the one before
   */
  public record Scanned(String typed, String wrong, List<String> near) {
    static final Scanned NOTHING = new Scanned("", "", List.of());

    /** For each form its own. */
    public UUID commandId() {
      return UuidV7.next();
    }
  }

  @GET
  public String begin() {
    return delivery(DeliveryForm.BLANK, new Wrong(List.of()), UuidV7.next());
  }

  private String delivery(DeliveryForm form, Wrong wrong, UUID id) {
    Offered offered =
        new Offered(places.all(), views.models(), views.sizes(), receivings.last(LAST));
    return Templates.delivery(form, wrong, offered, id).render();
  }

  @POST
  public Response open(
      @RestForm String commandId,
      @RestForm String model,
      @RestForm String size,
      @RestForm String lot,
      @RestForm String manufacturedOn,
      @RestForm String certifiedUntil,
      @RestForm String place) {
    UUID id = CommandId.of(commandId);
    DeliveryForm form = new DeliveryForm(model, size, lot, manufacturedOn, certifiedUntil, place);
    try {
      desk.open(form, id);
    } catch (Problem problem) {
      String page = delivery(form, new Wrong(problem.errors()), id);
      return Response.status(problem.status()).entity(page).build();
    }
    return Answers.goTo("/inventory/receive/" + id);
  }

  @GET
  @Path("/{receiving}")
  public String show(@PathParam("receiving") UUID receiving) {
    return Templates.receive(receivings.progress(receiving), Scanned.NOTHING).render();
  }

  /**
   * @param untagged anything but empty when it has no tag
   */
  @POST
  @Path("/{receiving}")
  public Response take(
      @PathParam("receiving") UUID receiving,
      @RestForm String commandId,
      @RestForm String tag,
      @RestForm String untagged) {
    UUID id = CommandId.of(commandId);
    String typed = tag == null ? "" : tag.strip();
    try {
      if (untagged != null && !untagged.isEmpty()) {
        desk.takeUntagged(receiving, id);
      } else {
        desk.take(receiving, typed, id);
      }
    } catch (Problem problem) {
      Progress progress = receivings.progress(receiving);
      Scanned scanned = new Scanned(typed, problem.getMessage(), near(typed, progress));
      String page = Templates.receive(progress, scanned).render();
      return Response.status(problem.status()).entity(page).build();
    }
    return Answers.goTo("/inventory/receive/" + receiving);
  }

  private List<String> near(String typed, Progress progress) {
    if (!(reading.read(typed) instanceof Slip slip)) {
      return List.of();
    }
    List<String> expected = receivings.expected(slip.near());
    return expected.isEmpty() && !progress.latest().isEmpty()
        ? like(progress.latest().getFirst().tag(), slip.near())
        : expected;
  }

  /** With letters and digits where the one before has them, the check character left out. */
  private static List<String> like(String before, List<String> near) {
    String shape = shape(before);
    return near.stream().filter(t -> shape(t).equals(shape)).limit(3).toList();
  }

  private static String shape(String tag) {
    return tag.substring(0, tag.length() - 1).replaceAll("[0-9]", "0").replaceAll("[A-Z]", "A")
        + tag.substring(0, 2);
  }
}
