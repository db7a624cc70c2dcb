package org.tapeline.sizing.reading;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestQuery;
import org.tapeline.sizing.reading.ReadingText.Understood;

/** Says back what a reading is understood as while it is being typed. */
@Path("/readings/said")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class SaidBack {

  @CheckedTemplate(basePath = "reading")
  static class Templates {
    private Templates() {}

    static native TemplateInstance said(Said said);
  }

  /** What was understood, or why not; empty where nothing is typed yet. */
  public record Said(boolean understood, String text) {
    public boolean isEmpty() {
      return text.isEmpty();
    }
  }

  /** The reading comes under the name of its field. */
  @GET
  public TemplateInstance said(
      @RestQuery String first, @RestQuery String second, @RestQuery String third) {
    String typed =
        Stream.of(first, second, third)
            .filter(text -> text != null && !text.isBlank())
            .findFirst()
            .orElse("");
    return Templates.said(typed.isEmpty() ? new Said(false, "") : understood(typed));
  }

  private static Said understood(String typed) {
    return switch (ReadingText.understand(typed)) {
      case Understood.Ok ok -> new Said(true, ok.reading().saidBack());
      case Understood.Not not -> new Said(false, not.reason());
    };
  }
}
