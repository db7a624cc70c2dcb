package org.tapeline.stack.gateway;

import io.vertx.core.Future;
import io.vertx.core.MultiMap;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.httpproxy.Body;
import io.vertx.httpproxy.ProxyContext;
import io.vertx.httpproxy.ProxyInterceptor;
import io.vertx.httpproxy.ProxyResponse;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tells a service under which address it is seen, and the caller in plain words when it is away.
 */
record AsTheGateway(Optional<URI> publicAddress, Pages pages, String service)
    implements ProxyInterceptor {
  /**
   * What only the gateway may say and a caller may not claim, and what concerns the caller's own
   * connection alone.
   */
  private static final List<String> DROPPED =
      List.of(
          "Forwarded",
          "X-Forwarded-Port",
          "X-Forwarded-Prefix",
          "X-Forwarded-Server",
          "X-Forwarded-Ssl",
          "Expect",
          "Upgrade",
          "HTTP2-Settings");

  private static final int TOO_LARGE = 413;

  private static final String PROBLEM =
      """
      {"type":"https://tapeline.org/problems/service-away","title":"Not reachable just now",\
      "status":503,"detail":"The %s service does not answer. Whether the last entry was stored is not \
      known: send it again in a moment with the same Idempotency-Key, it will not be done twice."}\
      """;

  @Override
  public Future<ProxyResponse> handleProxyRequest(ProxyContext context) {
    HttpServerRequest outer = context.request().proxiedRequest();
    MultiMap headers = context.request().headers();
    DROPPED.forEach(headers::remove);
    headers.set("X-Forwarded-Host", host(outer));
    headers.set("X-Forwarded-Proto", publicAddress.map(URI::getScheme).orElse("http"));
    headers.set("X-Forwarded-For", outer.remoteAddress().hostAddress());
    return context.sendRequest().recover(failure -> Future.succeededFuture(away(context)));
  }

  /** A service that has enough in the middle of a body ends it without a word. */
  @Override
  public Future<Void> handleProxyResponse(ProxyContext context) {
    ProxyResponse response = context.response();
    if (response.getStatusCode() == TOO_LARGE && response.getBody().length() == 0) {
      String accept = context.request().proxiedRequest().getHeader("Accept");
      Refusal.Said said = new Refusal(pages).said(accept, TOO_LARGE);
      response.putHeader("Content-Type", said.type());
      response.setBody(Body.body(Buffer.buffer(said.text())));
    }
    return context.sendResponse();
  }

  private String host(HttpServerRequest outer) {
    return publicAddress
        .map(URI::getAuthority)
        .or(() -> Optional.ofNullable(outer.authority()).map(Object::toString))
        .orElse("localhost");
  }

  private ProxyResponse away(ProxyContext context) {
    String accept = context.request().proxiedRequest().getHeader("Accept");
    boolean page = accept != null && accept.contains("text/html");
    String body =
        page ? pages.render("away", Map.of("service", service)) : PROBLEM.formatted(service);
    ProxyResponse response = context.request().release().response();
    response.setStatusCode(503);
    response.putHeader("Retry-After", "5");
    response.putHeader("Cache-Control", "no-store");
    response.putHeader(
        "Content-Type", page ? "text/html; charset=utf-8" : "application/problem+json");
    response.setBody(Body.body(Buffer.buffer(body)));
    return response;
  }
}
