package org.tapeline.journal.quarkus.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.UuidV7;

/** Refuses a request that has not come as far as a resource. */
final class RawRefusal {
  private RawRefusal() {}

  /** Without the menu: who is calling is not known here. */
  @CheckedTemplate(basePath = "refused")
  static class Templates {
    private Templates() {}

    static native TemplateInstance page(String title, String detail);
  }

  static void send(RoutingContext context, Problem problem) {
    String path = context.normalizedPath();
    boolean program = ForPrograms.is(path.replaceFirst("^/[a-z]+", ""));
    context
        .response()
        .setStatusCode(problem.status())
        .putHeader(HttpHeaders.CACHE_CONTROL, "no-store")
        .putHeader(
            HttpHeaders.CONTENT_TYPE,
            program ? "application/problem+json" : "text/html; charset=utf-8")
        .end(program ? json(problem, path) : page(problem));
  }

  private static String json(Problem problem, String path) {
    try {
      return EventJson.MAPPER.writeValueAsString(ProblemBody.of(problem, path, UuidV7.next()));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A problem can be written", e);
    }
  }

  private static String page(Problem problem) {
    return Templates.page(problem.title(), problem.getMessage()).render();
  }
}
