package org.tapeline.notify.help;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** Families who asked for a call: all of them, or those of a fitter's fields. */
@Path("/calls")
@RolesAllowed({"equipment-manager", "fitter"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class CallsPage {
  private final CallList calls;
  private final HelpDesk desk;
  private final Caller caller;

  CallsPage(CallList calls, HelpDesk desk, Caller caller) {
    this.calls = calls;
    this.desk = desk;
    this.caller = caller;
  }

  /**
   * A line of the list.
   *
   * @param commandId of the button, so that pressing it twice does it once
   */
  public record Line(CallList.Call call, UUID commandId) {}

  @CheckedTemplate(basePath = "help")
  static class Templates {
    private Templates() {}

    static native TemplateInstance calls(List<Line> lines);
  }

  @GET
  public TemplateInstance list() {
    return Templates.calls(
        calls.open(field -> caller.isManager() || field != null && caller.mayWorkAt(field)).stream()
            .map(call -> new Line(call, UuidV7.next()))
            .toList());
  }

  @POST
  @Path("/{help}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response called(@PathParam("help") UUID help, @FormParam("commandId") String commandId) {
    desk.answer(help, CommandId.of(commandId));
    return Answers.goTo("/notify/calls");
  }
}
