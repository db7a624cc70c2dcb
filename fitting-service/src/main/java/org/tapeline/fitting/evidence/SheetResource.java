package org.tapeline.fitting.evidence;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.file.PagePdf;
import org.tapeline.journal.quarkus.file.QrCode;
import org.tapeline.journal.quarkus.http.Problem;

/** The evidence sheet of a sign-off, to print and to keep. */
@Path("/sign-offs")
@RolesAllowed({"fitter", "coach", "equipment-manager"})
@RunOnVirtualThread
public class SheetResource {
  private static final String PDF = "application/pdf";

  private final Evidences evidences;
  private final Protocols protocols;
  private final SheetLinks links;
  private final Caller caller;
  private final Clock clock;

  SheetResource(
      Evidences evidences, Protocols protocols, SheetLinks links, Caller caller, Clock clock) {
    this.evidences = evidences;
    this.protocols = protocols;
    this.links = links;
    this.caller = caller;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "evidence")
  static class Templates {
    private Templates() {}

    static native TemplateInstance sheet(SheetView sheet, String qr);
  }

  /**
   * @throws Problem when that session signed nobody off, or the player is not of an own field or
   *     team
   */
  @GET
  @Path("/{session}/sheet.pdf")
  @Produces(PDF)
  @Transactional
  public Response sheet(@PathParam("session") UUID session) {
    Evidence evidence =
        evidences
            .of(session)
            .orElseThrow(
                () ->
                    Problem.notFound(
                        "No sign-off came of that session. Open the player's page and take a sheet"
                            + " from there."));
    Optional<PlayerCopy> player = PlayerCopy.findByIdOptional(evidence.player());
    mustBeOwn(evidence, player);
    Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    SheetView view =
        SheetView.of(
            evidence,
            player,
            evidences.standing(evidence),
            new SheetWords(protocols.inForce()),
            now);
    String address =
        links.addressOf(new SheetKey.Reference(session, Fingerprint.of(evidence), now));
    return Response.ok(PagePdf.of(Templates.sheet(view, QrCode.of(address)).render()), PDF)
        .header(
            HttpHeaders.CONTENT_DISPOSITION,
            "inline; filename=\"sign-off-" + evidence.tag() + ".pdf\"")
        .build();
  }

  /** A fitter sees what was done at own fields, and players of own fields; a coach the own team. */
  private void mustBeOwn(Evidence evidence, Optional<PlayerCopy> player) {
    String field = player.map(p -> p.field).orElse(evidence.field());
    String team = player.map(p -> p.team).orElse(evidence.team());
    if (!caller.mayWorkAt(evidence.field())
        && !caller.mayWorkAt(field)
        && !caller.mayFollow(team)) {
      throw Problem.otherField("This sign-off is of a player of another field and team.");
    }
  }
}
