package org.tapeline.stack.gateway;

import io.vertx.core.Vertx;
import io.vertx.core.http.HttpClient;
import io.vertx.core.http.HttpClientOptions;
import io.vertx.core.http.HttpClientRequest;
import io.vertx.core.http.RequestOptions;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import io.vertx.httpproxy.HttpProxy;
import io.vertx.httpproxy.OriginRequestProvider;
import io.vertx.httpproxy.ProxyContext;
import java.net.URI;
import java.util.Set;

/**
 * Passes {@code /<service>/...} on to that service and to no other host, whatever the request says.
 * Bodies and event streams pass as they come.
 */
final class Forwarding {
  private static final int CONNECT_MILLIS = 2_000;

  /** Until the service begins to answer; a stream may then go on for as long as it likes. */
  private static final long ANSWER_MILLIS = 60_000;

  /** Of each service; every sideline list that is open somewhere holds one. */
  private static final int CONNECTIONS = 2_000;

  private static final Set<String> WITH_START_PAGE = Set.of("inventory");

  private final HttpClient client;
  private final Pages pages;
  private final GatewaySettings settings;

  Forwarding(Vertx vertx, Pages pages, GatewaySettings settings) {
    this.client =
        vertx.createHttpClient(
            new HttpClientOptions().setConnectTimeout(CONNECT_MILLIS).setMaxPoolSize(CONNECTIONS));
    this.pages = pages;
    this.settings = settings;
  }

  void mount(Router router) {
    settings.addresses().forEach((service, address) -> mount(router, service, address));
  }

  private void mount(Router router, String service, String address) {
    HttpProxy proxy = HttpProxy.reverseProxy(client);
    proxy.origin(origin(URI.create(address)));
    proxy.addInterceptor(new AsTheGateway(settings.publicAddress(), pages, service));
    // Health and metrics are for those who run the services, not for whoever finds the gateway.
    router.route("/" + service + "/q").handler(pages::notFound);
    router.route("/" + service + "/q/*").handler(pages::notFound);
    router.route("/" + service).handler(context -> start(context, service));
    router.route("/" + service + "/*").handler(context -> forward(context, proxy));
  }

  /** The address of a service alone: its own start page where it has one, else that of all. */
  private static void start(RoutingContext context, String service) {
    if (!WITH_START_PAGE.contains(service)) {
      context.redirect("/");
    } else if (context.normalizedPath().endsWith("/")) {
      context.next();
    } else {
      context.redirect("/" + service + "/");
    }
  }

  private static void forward(RoutingContext context, HttpProxy proxy) {
    proxy.handle(context.request());
  }

  private static OriginRequestProvider origin(URI address) {
    RequestOptions options =
        new RequestOptions()
            .setHost(address.getHost())
            .setPort(address.getPort())
            .setIdleTimeout(ANSWER_MILLIS);
    return new OriginRequestProvider() {
      @Override
      public io.vertx.core.Future<HttpClientRequest> create(ProxyContext context) {
        return context.client().request(options);
      }
    };
  }
}
