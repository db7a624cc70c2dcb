package org.tapeline.inventory.damage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.helmet.HelmetAccess;
import org.tapeline.inventory.helmet.HelmetViews;
import org.tapeline.inventory.helmet.HelmetViews.Filter;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.inventory.helmet.TagReading;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.Problem;

/** Which helmet is damaged: its tag as typed, or one of the own fields. */
@Path("/damage")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class StartPage {
  private static final int MOST = 500;

  private final HelmetViews views;
  private final HelmetAccess access;
  private final TagReading tags;

  StartPage(HelmetViews views, HelmetAccess access, TagReading tags) {
    this.views = views;
    this.access = access;
    this.tags = tags;
  }

  @CheckedTemplate(basePath = "damage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance start(
        String tag, String wrong, List<String> near, List<View> own);
  }

  @GET
  public String show() {
    return show("", "", List.of());
  }

  @POST
  public Response go(@RestForm String tag, @RestForm String chosen) {
    String typed = tag == null ? "" : tag.strip();
    String asked = typed.isEmpty() && chosen != null ? chosen.strip() : typed;
    try {
      if (asked.isEmpty()) {
        throw Problem.badRequest("tag", "Type the tag, or choose the helmet from the list.");
      }
      String known = access.see(tags.needed(asked)).tag();
      return Answers.goTo("/inventory/helmets/" + known + "/damage");
    } catch (Problem problem) {
      return Response.status(problem.status())
          .entity(show(typed, problem.getMessage(), near(asked)))
          .build();
    }
  }

  /** What may have been meant, as far as the caller may see it. */
  private List<String> near(String typed) {
    return tags.known(typed).stream().filter(access::maySee).toList();
  }

  private String show(String tag, String wrong, List<String> near) {
    return Templates.start(tag, wrong, near, own()).render();
  }

  /** Whoever sees all helmets types the tag; a list of all of them would help nobody. */
  private List<View> own() {
    return access
        .bounds()
        .map(
            fields ->
                views.list(new Filter("", "", "", ""), Optional.of(fields), MOST).stream()
                    .filter(h -> !h.state().equals("retired"))
                    .toList())
        .orElse(List.of());
  }
}
