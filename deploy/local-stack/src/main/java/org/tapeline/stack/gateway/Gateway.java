package org.tapeline.stack.gateway;

import io.vertx.core.Vertx;
import io.vertx.core.http.HttpServer;
import io.vertx.core.http.HttpServerOptions;
import io.vertx.ext.web.Router;
import java.io.IOException;
import java.net.URI;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** One address for all services, with the pages that belong to none of them. */
public final class Gateway implements AutoCloseable {
  private static final long PATIENCE_SECONDS = 30;
  private static final int LARGEST_HEADERS = 16 * 1024;
  private static final int IDLE_SECONDS = 120;

  private final Vertx vertx;
  private final int port;

  private Gateway(Vertx vertx, int port) {
    this.vertx = vertx;
    this.port = port;
  }

  /** Runs alone, for the container set; see {@link GatewaySettings#from}. */
  public static void main(String[] args) throws IOException {
    Gateway gateway = start(GatewaySettings.from(System.getenv()));
    System.out.println("The gateway listens on port " + gateway.port());
    Runtime.getRuntime().addShutdownHook(new Thread(gateway::close));
  }

  /**
   * @throws IOException when it cannot listen there
   */
  public static Gateway start(GatewaySettings settings) throws IOException {
    return start(settings, SlowCallers.Limits.USUAL);
  }

  static Gateway start(GatewaySettings settings, SlowCallers.Limits limits) throws IOException {
    Vertx vertx = Vertx.vertx();
    Pages pages = new Pages();
    SlowCallers slow = new SlowCallers(vertx, limits);
    HttpServerOptions options =
        new HttpServerOptions()
            .setHost(settings.host())
            .setPort(settings.port())
            .setMaxHeaderSize(LARGEST_HEADERS)
            .setIdleTimeout(IDLE_SECONDS)
            .setHandle100ContinueAutomatically(true)
            // The proxy cannot pass a body on from HTTP/2 to HTTP/1.1.
            .setHttp2ClearTextEnabled(false);
    try {
      HttpServer server =
          vertx
              .createHttpServer(options)
              .connectionHandler(slow::connected)
              .invalidRequestHandler(new Refusal(pages)::unreadable)
              .requestHandler(routes(vertx, settings, pages, slow))
              .listen()
              .toCompletionStage()
              .toCompletableFuture()
              .get(PATIENCE_SECONDS, TimeUnit.SECONDS);
      return new Gateway(vertx, server.actualPort());
    } catch (ExecutionException | TimeoutException e) {
      vertx.close();
      throw new IOException(
          "The gateway cannot listen on port " + settings.port() + ": " + e.getMessage(), e);
    } catch (InterruptedException e) {
      vertx.close();
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted", e);
    }
  }

  private static Router routes(
      Vertx vertx, GatewaySettings settings, Pages pages, SlowCallers slow) {
    Router router = Router.router(vertx);
    router.route().handler(slow::asked);
    boolean https =
        settings.publicAddress().map(URI::getScheme).filter("https"::equals).isPresent();
    router.route().handler(new SecurityHeaders(https)::add);
    new Assets().mount(router);
    new SignIn(pages).mount(router);
    new ChainPage(vertx, settings.addresses(), pages).mount(router);
    settings
        .mailbox()
        .ifPresent(
            box -> {
              new TextPages(box.texts(), pages).mount(router);
              new MailboxPages(box, pages).mount(router);
            });
    new Forwarding(vertx, pages, settings).mount(router);
    boolean mailbox = settings.mailbox().isPresent();
    router.get("/").handler(context -> pages.send(context, "home", Map.of("mailbox", mailbox)));
    router.route().last().handler(pages::notFound);
    Refusal refusal = new Refusal(pages);
    for (int status : new int[] {400, 413}) {
      router.errorHandler(status, context -> refusal.refuse(context.request(), status));
    }
    router.errorHandler(404, pages::notFound);
    router.errorHandler(500, pages::failed);
    return router;
  }

  public int port() {
    return port;
  }

  @Override
  public void close() {
    try {
      vertx
          .close()
          .toCompletionStage()
          .toCompletableFuture()
          .get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException | TimeoutException e) {
      throw new IllegalStateException("The gateway did not stop", e);
    }
  }
}
