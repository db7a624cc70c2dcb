package org.tapeline.notify.notice;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.tapeline.journal.quarkus.http.Problem;

/** Notices for other programs, and for whoever asks what became of one. */
@Path("/api/notices")
@RolesAllowed("equipment-manager")
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class NoticeResource {
  private final NoticeViews views;

  NoticeResource(NoticeViews views) {
    this.views = views;
  }

  /** Notices, newest first; at most {@link NoticeViews#MOST}. */
  public record Listing(List<NoticeViews.Line> notices) {}

  @GET
  @Operation(summary = "The newest notices, of one re-fit case or in one state")
  public Listing list(
      @QueryParam("refitCase") String refitCase, @QueryParam("state") String state) {
    Optional<UUID> id =
        Optional.ofNullable(refitCase).filter(c -> !c.isBlank()).map(NoticeResource::caseId);
    return new Listing(views.list(id, NoticeStates.filter(state)));
  }

  @GET
  @Path("/{notice}")
  @Operation(summary = "One notice with its causes, tries and text")
  public NoticeViews.Whole one(@PathParam("notice") UUID notice) {
    return views
        .one(notice)
        .orElseThrow(() -> Problem.notFound("There is no such notice. Look in the list."));
  }

  private static UUID caseId(String text) {
    try {
      return UUID.fromString(text);
    } catch (IllegalArgumentException e) {
      throw Problem.badRequest(
          "not-a-case", "refitCase is a UUID.", new Problem.FieldError("refitCase", text));
    }
  }
}
