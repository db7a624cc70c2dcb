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
import java.util.Map;
import java.util.Optional;

/**
 * Tells a service under which address it is seen, and the caller in plain words when it is away.
 */
record AsTheGateway(Optional<URI> publicAddress, Pages pages, String service)
    implements ProxyInterceptor {
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
    // Only the gateway may say these; what a caller claims is dropped.
    headers.remove("Forwarded");
    headers.remove("X-Forwarded-Port");
    headers.remove("X-Forwarded-Prefix");
    headers.remove("X-Forwarded-Server");
    headers.remove("X-Forwarded-Ssl");
    headers.remove("Expect");
    headers.set("X-Forwarded-Host", host(outer));
    headers.set("X-Forwarded-Proto", publicAddress.map(URI::getScheme).orElse("http"));
    headers.set("X-Forwarded-For", outer.remoteAddress().hostAddress());
    return context.sendRequest().recover(failure -> Future.succeededFuture(away(context)));
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
