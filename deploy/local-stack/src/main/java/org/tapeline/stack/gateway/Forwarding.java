package org.tapeline.stack.gateway;

import io.vertx.core.Future;
import io.vertx.core.MultiMap;
import io.vertx.core.Vertx;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpClient;
import io.vertx.core.http.HttpClientOptions;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.Router;
import io.vertx.httpproxy.Body;
import io.vertx.httpproxy.HttpProxy;
import io.vertx.httpproxy.ProxyContext;
import io.vertx.httpproxy.ProxyInterceptor;
import io.vertx.httpproxy.ProxyResponse;
import java.net.URI;

/** Passes {@code /<service>/...} on to the service, whatever else the request says. */
final class Forwarding {
  private static final int CONNECT_MILLIS = 2_000;
  private static final int CONNECTIONS = 64;

  private Forwarding() {}

  static void mount(Vertx vertx, Router router, String service, String address) {
    URI origin = URI.create(address);
    HttpClient client =
        vertx.createHttpClient(
            new HttpClientOptions().setConnectTimeout(CONNECT_MILLIS).setMaxPoolSize(CONNECTIONS));
    HttpProxy proxy = HttpProxy.reverseProxy(client);
    proxy.origin(origin.getPort(), origin.getHost());
    proxy.addInterceptor(new AsTheGateway(service));
    router.route("/" + service + "/*").handler(context -> proxy.handle(context.request()));
  }

  /** Tells the service under which address it is seen, and the caller when it is away. */
  private record AsTheGateway(String service) implements ProxyInterceptor {

    @Override
    public Future<ProxyResponse> handleProxyRequest(ProxyContext context) {
      HttpServerRequest outer = context.request().proxiedRequest();
      MultiMap headers = context.request().headers();
      // Only the gateway may say these.
      headers.remove("Forwarded");
      headers.set("X-Forwarded-Host", outer.authority().toString());
      headers.set("X-Forwarded-Proto", outer.scheme());
      headers.set("X-Forwarded-For", outer.remoteAddress().hostAddress());
      headers.remove("X-Forwarded-Port");
      headers.remove("X-Forwarded-Prefix");
      return context.sendRequest().recover(failure -> Future.succeededFuture(away(context)));
    }

    private ProxyResponse away(ProxyContext context) {
      String problem =
          """
          {"type":"https://tapeline.org/problems/service-away","title":"Service not reachable",\
          "status":503,"detail":"The %s service does not answer just now. Nothing that was entered \
          before is lost. Try again in a moment."}\
          """
              .formatted(service);
      ProxyResponse response = context.request().release().response();
      response.setStatusCode(503);
      response.putHeader("Content-Type", "application/problem+json");
      response.putHeader("Retry-After", "5");
      response.setBody(Body.body(Buffer.buffer(problem)));
      return response;
    }
  }
}
