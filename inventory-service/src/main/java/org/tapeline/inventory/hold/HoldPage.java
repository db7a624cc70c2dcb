package org.tapeline.inventory.hold;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.tapeline.journal.quarkus.access.Caller;

/** The holds there are, and how far each is. */
@Path("/holds")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class HoldPage {
  private final HoldStore store;
  private final Caller caller;

  HoldPage(HoldStore store, Caller caller) {
    this.store = store;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "hold")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<Hold> holds, boolean mayPlace);
  }

  @GET
  public String list() {
    return Templates.list(store.all(), caller.isManager()).render();
  }
}
