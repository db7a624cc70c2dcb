package org.tapeline.journal.quarkus.link;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;

/**
 * What all pages behind links say alike, in every language, since a wrong link says no language.
 */
public final class LinkPages {
  private LinkPages() {}

  @CheckedTemplate(basePath = "link")
  static class Templates {
    private Templates() {}

    static native TemplateInstance dead();

    static native TemplateInstance busy();
  }

  /** The one answer to every link that opens nothing, whatever is wrong with it. */
  public static Response dead() {
    return html(404, Templates.dead());
  }

  static Response busy(long seconds) {
    return Response.fromResponse(html(429, Templates.busy()))
        .header(HttpHeaders.RETRY_AFTER, seconds)
        .build();
  }

  public static Response html(int status, TemplateInstance page) {
    return Response.status(status)
        .entity(page.render())
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .build();
  }
}
