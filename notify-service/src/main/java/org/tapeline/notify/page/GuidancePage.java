package org.tapeline.notify.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.tapeline.journal.quarkus.link.LinkPage;
import org.tapeline.journal.quarkus.link.LinkPages;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Words;

/** What a family should know around a re-fit; the same for everybody, and about nobody. */
@Path("/guidance/{language}")
@PermitAll
@LinkPage
@RunOnVirtualThread
public class GuidancePage {
  /** The parts in their order: each has a heading and words. */
  private static final List<String> PARTS = List.of("until", "bring", "refit", "fit", "hit");

  private final Words words;

  GuidancePage(Words words) {
    this.words = words;
  }

  @CheckedTemplate(basePath = "page")
  static class Templates {
    private Templates() {}

    static native TemplateInstance guidance(Phrases phrases, List<Part> parts);
  }

  /** A part of the page. */
  record Part(String heading, String words) {}

  @GET
  public Response read(@PathParam("language") String language) {
    Phrases phrases = words.phrases(Language.of(language).orElse(Language.ENGLISH));
    List<Part> parts =
        PARTS.stream()
            .map(part -> new Part(phrases.of("guide.heading." + part), phrases.of("guide." + part)))
            .toList();
    return LinkPages.html(200, Templates.guidance(phrases, parts));
  }
}
