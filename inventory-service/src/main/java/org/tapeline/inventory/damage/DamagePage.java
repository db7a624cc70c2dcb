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
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.tapeline.inventory.damage.DamageDesk.Said;
import org.tapeline.inventory.helmet.HelmetAccess;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Reporting damage on a phone: where, what, check and send; a tap each, without script. */
@Path("/helmets/{tag}/damage")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class DamagePage {
  private final DamageDesk desk;
  private final PhotoDesk photos;
  private final HelmetAccess access;

  DamagePage(DamageDesk desk, PhotoDesk photos, HelmetAccess access) {
    this.desk = desk;
    this.photos = photos;
    this.access = access;
  }

  @CheckedTemplate(basePath = "damage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance form(
        View helmet, DamageRules rules, Step step, UUID commandId, String wrong);
  }

  /**
   * How far the report is; what is empty is asked next.
   *
   * @param where a code of the rules
   * @param what a code of the rules
   */
  public record Step(String where, String what, boolean structural) {
    public int number() {
      return where.isEmpty() ? 1 : what.isEmpty() ? 2 : 3;
    }
  }

  @GET
  public String form(
      @PathParam("tag") String tag,
      @QueryParam("where") String where,
      @QueryParam("what") String what) {
    return show(tag, step(where, what), UuidV7.next(), "");
  }

  /** The report counts also when its photo cannot be taken: that is said beside the photo. */
  @POST
  @Consumes({MediaType.MULTIPART_FORM_DATA, MediaType.APPLICATION_FORM_URLENCODED})
  public Response report(
      @PathParam("tag") String tag,
      @RestForm String commandId,
      @RestForm String where,
      @RestForm String what,
      @RestForm("photo") FileUpload photo)
      throws IOException {
    String known = access.see(tag).tag();
    UUID id = CommandId.of(commandId);
    try {
      desk.report(known, new Said(text(where), text(what)), id);
    } catch (Problem problem) {
      return Response.status(problem.status())
          .entity(show(known, step(where, what), id, problem.getMessage()))
          .build();
    }
    String refused = photo == null || photo.size() == 0 ? "" : add(known, id, photo);
    return Answers.goTo(
        "/inventory/helmets/"
            + known
            + "/damage/"
            + id
            + (refused.isEmpty() ? "" : "?photo=" + refused));
  }

  private String add(String tag, UUID report, FileUpload photo) throws IOException {
    try {
      photos.add(tag, report, Files.readAllBytes(photo.uploadedFile()), DonePage.photoId(report));
      return "";
    } catch (Problem problem) {
      return problem.code();
    }
  }

  /** A code that is not known counts as not said. */
  private Step step(String where, String what) {
    DamageRules rules = desk.rules();
    String place = rules.knowsWhere(text(where)) ? text(where) : "";
    String kind = !place.isEmpty() && rules.knowsWhat(text(what)) ? text(what) : "";
    return new Step(place, kind, rules.structural(place, kind));
  }

  private String show(String tag, Step step, UUID commandId, String wrong) {
    return Templates.form(access.see(tag), desk.rules(), step, commandId, wrong).render();
  }

  private static String text(String said) {
    return said == null ? "" : said.strip();
  }
}
