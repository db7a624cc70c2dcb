package org.tapeline.stack.gateway;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import io.vertx.core.Vertx;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;

/** Everything that one command led to, over all services, in order of time. */
final class ChainPage {
  private static final ObjectMapper JSON =
      new ObjectMapper()
          .registerModule(new JavaTimeModule())
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS);
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private final Vertx vertx;
  private final Map<String, String> addresses;
  private final Pages pages;
  private final HttpClient http = HttpClient.newHttpClient();

  ChainPage(Vertx vertx, Map<String, String> addresses, Pages pages) {
    this.vertx = vertx;
    this.addresses = addresses;
    this.pages = pages;
  }

  /**
   * A row of the page.
   *
   * @param afterMillis since the first event of the chain
   */
  public record Row(
      String service,
      String event,
      String stream,
      Instant time,
      long afterMillis,
      UUID id,
      UUID causationId,
      String data) {}

  private record Link(
      String service,
      UUID id,
      String stream,
      long version,
      String type,
      Instant time,
      UUID causationId,
      JsonNode data) {}

  private record Answer(int status, String service, List<Link> links) {}

  void mount(Router router) {
    router.get("/chains/:correlation").handler(this::show);
  }

  private void show(RoutingContext context) {
    UUID correlation;
    try {
      correlation = UUID.fromString(context.pathParam("correlation"));
    } catch (IllegalArgumentException e) {
      pages.notFound(context);
      return;
    }
    String cookie = context.request().getHeader("Cookie");
    String authorization = context.request().getHeader("Authorization");
    vertx
        .executeBlocking(() -> ask(correlation, cookie, authorization))
        .onSuccess(answers -> answer(context, correlation, answers))
        .onFailure(context::fail);
  }

  /** All services at once, with what the caller has to show for itself. */
  private List<Answer> ask(UUID correlation, String cookie, String authorization) {
    List<CompletableFuture<Answer>> asked =
        addresses.entrySet().stream()
            .map(
                service -> {
                  String path = "/" + service.getKey() + "/api/chains/" + correlation;
                  HttpRequest.Builder request =
                      HttpRequest.newBuilder(URI.create(service.getValue() + path))
                          .header("Accept", "application/json")
                          .timeout(PATIENCE);
                  Optional.ofNullable(cookie).ifPresent(c -> request.header("Cookie", c));
                  Optional.ofNullable(authorization)
                      .ifPresent(a -> request.header("Authorization", a));
                  return http.sendAsync(request.build(), HttpResponse.BodyHandlers.ofString())
                      .thenApply(response -> read(service.getKey(), response))
                      .exceptionally(away -> new Answer(503, service.getKey(), List.of()));
                })
            .toList();
    return asked.stream().map(CompletableFuture::join).toList();
  }

  private static Answer read(String service, HttpResponse<String> response) {
    try {
      List<Link> links =
          response.statusCode() == 200
              ? JSON.readValue(response.body(), new TypeReference<List<Link>>() {})
              : List.of();
      return new Answer(response.statusCode(), service, links);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void answer(RoutingContext context, UUID correlation, List<Answer> answers) {
    String accept = context.request().getHeader("Accept");
    boolean json = accept != null && accept.contains("application/json");
    if (answers.stream().anyMatch(a -> a.status == 401 || a.status == 302)) {
      if (json) {
        context.response().setStatusCode(401).end();
      } else {
        context.redirect("/sign-in");
      }
      return;
    }
    if (answers.stream().anyMatch(a -> a.status == 403)) {
      context.response().setStatusCode(403);
      pages.send(context, "not-allowed", Map.of());
      return;
    }
    List<String> away = answers.stream().filter(a -> a.status != 200).map(Answer::service).toList();
    List<Row> rows = rows(answers);
    if (json) {
      context
          .response()
          .putHeader("Content-Type", "application/json")
          .end(JSON.valueToTree(Map.of("events", rows, "away", away)).toString());
    } else {
      pages.send(context, "chain", Map.of("correlation", correlation, "rows", rows, "away", away));
    }
  }

  private static List<Row> rows(List<Answer> answers) {
    List<Link> links =
        answers.stream()
            .flatMap(answer -> answer.links.stream())
            .sorted(Comparator.comparing(Link::time).thenComparing(Link::version))
            .toList();
    if (links.isEmpty()) {
      return List.of();
    }
    Instant first = links.getFirst().time();
    return links.stream().map(link -> row(link, first)).toList();
  }

  private static Row row(Link link, Instant first) {
    String event = link.type().replaceFirst("^org\\.tapeline\\.[a-z]+\\.", "");
    return new Row(
        link.service(),
        event.replaceFirst("\\.v1$", "").replace('-', ' '),
        link.stream(),
        link.time(),
        Duration.between(first, link.time()).toMillis(),
        link.id(),
        link.causationId(),
        link.data().toPrettyString());
  }
}
