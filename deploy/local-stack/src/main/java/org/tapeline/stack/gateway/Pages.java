package org.tapeline.stack.gateway;

import io.quarkus.qute.Engine;
import io.quarkus.qute.HtmlEscaper;
import io.quarkus.qute.ReflectionValueResolver;
import io.quarkus.qute.TemplateLocator.TemplateLocation;
import io.quarkus.qute.Variant;
import io.vertx.ext.web.RoutingContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The gateway's own pages, from templates beside the code. */
final class Pages {
  private static final Logger LOG = System.getLogger(Pages.class.getName());

  private final Engine engine =
      Engine.builder()
          .addDefaults()
          .addValueResolver(new ReflectionValueResolver())
          .addResultMapper(new HtmlEscaper(List.of(Variant.TEXT_HTML)))
          .addLocator(Pages::locate)
          .build();

  private static Optional<TemplateLocation> locate(String name) {
    InputStream in = Pages.class.getResourceAsStream("/templates/" + name + ".html");
    return in == null ? Optional.empty() : Optional.of(new Located(read(in)));
  }

  private static String read(InputStream in) {
    try (in) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private record Located(String text) implements TemplateLocation {
    @Override
    public Reader read() {
      return new StringReader(text);
    }

    @Override
    public Optional<Variant> getVariant() {
      return Optional.of(Variant.forContentType(Variant.TEXT_HTML));
    }
  }

  /** For who is not known to be signed in. */
  String render(String template, Map<String, Object> data) {
    return render(template, data, false);
  }

  private String render(String template, Map<String, Object> data, boolean signedIn) {
    Map<String, Object> all = new HashMap<>(data);
    all.put("signedIn", signedIn);
    return engine.getTemplate(template).data(all).render();
  }

  void send(RoutingContext context, String template, Map<String, Object> data) {
    context
        .response()
        .putHeader("Content-Type", "text/html; charset=utf-8")
        .putHeader("Cache-Control", "no-store")
        .end(render(template, data, SignIn.hasCookie(context.request())));
  }

  void failed(RoutingContext context) {
    LOG.log(Level.ERROR, "Failed below /" + room(context), context.failure());
    context.response().setStatusCode(500);
    send(context, "failed", Map.of());
  }

  /** Not the whole address: the rest may be the token of a link. */
  private static String room(RoutingContext context) {
    String path = context.normalizedPath();
    return path.length() < 2 ? "" : path.substring(1).split("/", 2)[0];
  }

  void notFound(RoutingContext context) {
    context.response().setStatusCode(404);
    send(context, "not-found", Map.of());
  }
}
