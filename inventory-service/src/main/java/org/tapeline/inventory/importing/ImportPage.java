package org.tapeline.inventory.importing;

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
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.tapeline.inventory.csv.CsvFile;
import org.tapeline.inventory.csv.ImportAnswer;
import org.tapeline.inventory.csv.ImportAnswer.Mode;
import org.tapeline.inventory.csv.ImportRefused;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Imports by a page: choose a file, see every row that is wrong. */
@Path("/import")
@RolesAllowed({"equipment-manager", "warehouse"})
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
  @Path("/{what:places|travel|helmets|parts}")
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public TemplateInstance run(
      @PathParam("what") String what,
      @RestForm String commandId,
      @RestForm String mode,
      @RestForm("file") FileUpload file)
      throws IOException {
    if (file == null || file.size() == 0) {
      return Templates.page(
          UuidV7.next(), what, new Outcome(null, "Choose a file first.", List.of()));
    }
    try {
      String csv = CsvFile.text(Files.readAllBytes(file.uploadedFile()));
      String json = imports.run(what, CommandId.of(commandId), Mode.of(mode), csv).json();
      ImportAnswer answer = EventJson.MAPPER.readValue(json, ImportAnswer.class);
      return Templates.page(UuidV7.next(), what, new Outcome(answer, "", answer.errors()));
    } catch (ImportRefused refused) {
      return Templates.page(
          UuidV7.next(), what, new Outcome(null, refused.getMessage(), refused.errors()));
    } catch (Problem problem) {
      return Templates.page(
          UuidV7.next(), what, new Outcome(null, problem.getMessage(), List.of()));
    }
  }
}
