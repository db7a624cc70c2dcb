package org.tapeline.inventory.desk;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;

/** Where the warehouse and the equipment manager start the day. */
@Path("/")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class TodayPage {
  private final Today today;
  private final Clock clock;

  TodayPage(Today today, Clock clock) {
    this.today = today;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "desk")
  static class Templates {
    private Templates() {}

    static native TemplateInstance today(List<Today.Part> parts);
  }

  @GET
  public String show() {
    return Templates.today(today.parts(LocalDate.now(clock))).render();
  }
}
