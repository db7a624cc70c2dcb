package org.tapeline.sizing.importing;

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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.sizing.csv.CsvFile;
import org.tapeline.sizing.csv.ImportAnswer;
import org.tapeline.sizing.csv.ImportAnswer.Mode;
import org.tapeline.sizing.csv.ImportRefused;
import org.tapeline.sizing.importing.Imports.Then;

/** Imports by a page: choose a file, see every row that is wrong; charts become drafts first. */
@Path("/import")
@RolesAllowed("equipment-manager")
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class ImportPage {
  private final Imports imports;

  ImportPage(Imports imports) {
    this.imports = imports;
  }

  @CheckedTemplate(basePath = "importing")
  static class Templates {
    private Templates() {}

    static native TemplateInstance page(UUID commandId, String what, Outcome outcome);
  }

  /** How the last import went; nothing in it before the first. */
  public record Outcome(ImportAnswer answer, String refused, List<ImportAnswer.RowError> errors) {
    static final Outcome NONE = new Outcome(null, "", List.of());
  }

  @GET
  public TemplateInstance show() {
    return Templates.page(UuidV7.next(), "", Outcome.NONE);
  }

  @POST
  @Path("/{what:players|charts}")
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public Response run(
      @PathParam("what") String what,
      @RestForm String commandId,
      @RestForm String mode,
      @RestForm("file") FileUpload file)
      throws IOException {
    if (file == null || file.size() == 0) {
      return page(what, new Outcome(null, "Choose a file first.", List.of()));
    }
    try {
      String csv = CsvFile.text(Files.readAllBytes(file.uploadedFile()));
      Then then = what.equals("charts") ? Then.DRAFT : Then.PUBLISH;
      String json = imports.run(what, CommandId.of(commandId), Mode.of(mode), then, csv).json();
      ImportAnswer answer = EventJson.MAPPER.readValue(json, ImportAnswer.class);
      return then == Then.DRAFT && answer.accepted() > 0 && answer.errors().isEmpty()
          ? Answers.goTo("/sizing/charts/drafts")
          : page(what, new Outcome(answer, "", answer.errors()));
    } catch (ImportRefused refused) {
      return page(what, new Outcome(null, refused.getMessage(), refused.errors()));
    } catch (Problem problem) {
      return page(what, new Outcome(null, problem.getMessage(), List.of()));
    }
  }

  private static Response page(String what, Outcome outcome) {
    return Response.ok(Templates.page(UuidV7.next(), what, outcome).render()).build();
  }
}
