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
import java.util.Locale;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.helmet.AssetTag;
import org.tapeline.inventory.helmet.HelmetAccess;
import org.tapeline.inventory.helmet.HelmetViews;
import org.tapeline.inventory.helmet.HelmetViews.Filter;
import org.tapeline.inventory.helmet.HelmetViews.View;
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

  StartPage(HelmetViews views, HelmetAccess access) {
    this.views = views;
    this.access = access;
  }

  @CheckedTemplate(basePath = "damage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance start(String tag, String wrong, List<View> own);
  }

  @GET
  public String show() {
    return show("", "");
  }

  @POST
  public Response go(@RestForm String tag, @RestForm String chosen) {
    String typed = tag == null ? "" : tag.strip();
    String asked = typed.isEmpty() && chosen != null ? chosen.strip() : typed;
    try {
      return Answers.goTo("/inventory/helmets/" + access.see(read(asked)).tag() + "/damage");
    } catch (IllegalArgumentException e) {
      return Response.status(400).entity(show(typed, e.getMessage())).build();
    } catch (Problem problem) {
      return Response.status(problem.status()).entity(show(typed, problem.getMessage())).build();
    }
  }

  /** Small letters, blanks and dashes are how people type, not another tag. */
  private static String read(String typed) {
    if (typed.isEmpty()) {
      throw new IllegalArgumentException("Type the tag, or choose the helmet from the list.");
    }
    return new AssetTag(typed.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT)).value();
  }

  private String show(String tag, String wrong) {
    return Templates.start(tag, wrong, own()).render();
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
