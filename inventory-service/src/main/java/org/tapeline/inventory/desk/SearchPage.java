package org.tapeline.inventory.desk;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;

/** One box for everything; what is found exactly, and alone, is shown at once. */
@Path("/search")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class SearchPage {
  /** The address in the code on a helmet is found too. */
  private static final int LONGEST = 200;

  private final Finding finding;
  private final Caller caller;

  SearchPage(Finding finding, Caller caller) {
    this.finding = finding;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "desk")
  static class Templates {
    private Templates() {}

    static native TemplateInstance search(
        String words, String encoded, List<Hit> hits, boolean exact, boolean named);
  }

  /**
   * @param stay shows the list though there is one exact hit, for who came back
   */
  @GET
  public Response show(@QueryParam("q") String typed, @QueryParam("stay") String stay) {
    String stripped = typed == null ? "" : typed.strip();
    String words = stripped.substring(0, Math.min(LONGEST, stripped.length()));
    List<Hit> hits = words.isEmpty() ? List.of() : finding.find(words);
    List<Hit> exact = hits.stream().filter(Hit::exact).toList();
    if (exact.size() == 1 && stay == null) {
      return Answers.goTo(exact.getFirst().href());
    }
    boolean named = caller.worksAs("fitter") && words.length() >= 2;
    String encoded = URLEncoder.encode(words, StandardCharsets.UTF_8);
    String page = Templates.search(words, encoded, hits, !exact.isEmpty(), named).render();
    return Response.ok(page).build();
  }
}
