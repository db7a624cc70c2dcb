package org.tapeline.inventory.damage;

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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.tapeline.inventory.helmet.HelmetEvent.DamageReported;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** After a damage report: what happens now, and the photo, which may also come later. */
@Path("/helmets/{tag}/damage/{report}")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class DonePage {
  private static final String CHOOSE = "Choose a photo first.";

  private final PhotoDesk photos;
  private final PhotoStore store;
  private final DamageDesk desk;
  private final Caller caller;

  DonePage(PhotoDesk photos, PhotoStore store, DamageDesk desk, Caller caller) {
    this.photos = photos;
    this.store = store;
    this.desk = desk;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "damage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance done(View helmet, After after, UUID commandId);
  }

  /**
   * A report and what came of it.
   *
   * @param had whether a player had the helmet
   * @param photo what is known of its photo
   * @param wrong what is wrong with a photo that was sent; empty when nothing is
   */
  public record After(
      UUID report,
      String where,
      String what,
      boolean structural,
      boolean had,
      Optional<PhotoStore.Known> photo,
      boolean mayDelete,
      String wrong) {
    public boolean photoIsThere() {
      return photo.filter(PhotoStore.Known::isThere).isPresent();
    }

    public boolean photoIsGone() {
      return photo.filter(p -> !p.isThere()).isPresent();
    }
  }

  /** The id of the command that keeps the photo which came with the report. */
  static UUID photoId(UUID report) {
    return DerivedId.from(report, "photo");
  }

  @GET
  public String show(
      @PathParam("tag") String tag,
      @PathParam("report") UUID report,
      @QueryParam("photo") String refused) {
    return page(tag, report, sentence(refused));
  }

  /** The address holds a code only: what stands in an address is nobody's to write on a page. */
  private static String sentence(String refused) {
    return switch (refused == null ? "" : refused) {
      case "photo" ->
          "The photo could not be taken: only JPEG and PNG files up to 20 MB. Take it again.";
      case "photo-there" -> "This report has a photo already.";
      default -> "";
    };
  }

  private String page(String tag, UUID report, String wrong) {
    PhotoDesk.Reported reported = photos.report(tag, report);
    DamageReported said = reported.said();
    After after =
        new After(
            report,
            desk.rules().saidWhere(said.where()),
            desk.rules().saidWhat(said.what()),
            said.severity().equals("structural"),
            said.player().isPresent(),
            store.find(report),
            caller.isManager(),
            wrong);
    return Templates.done(reported.helmet(), after, UuidV7.next()).render();
  }

  /** A photo for a report that was sent before. */
  @POST
  @Path("/photo")
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public Response add(
      @PathParam("tag") String tag,
      @PathParam("report") UUID report,
      @RestForm String commandId,
      @RestForm("photo") FileUpload photo)
      throws IOException {
    String known = photos.report(tag, report).helmet().tag();
    if (photo == null || photo.size() == 0) {
      return refused(known, report, 400, CHOOSE);
    }
    try {
      photos.add(known, report, Files.readAllBytes(photo.uploadedFile()), CommandId.of(commandId));
      return Answers.goTo("/inventory/helmets/" + known + "/damage/" + report);
    } catch (Problem problem) {
      return refused(known, report, problem.status(), problem.getMessage());
    }
  }

  private Response refused(String tag, UUID report, int status, String wrong) {
    return Response.status(status).entity(page(tag, report, wrong)).build();
  }
}
