package org.tapeline.stack.gateway;

import io.vertx.core.Vertx;
import io.vertx.core.http.HttpServer;
import io.vertx.core.http.HttpServerOptions;
import io.vertx.ext.web.Router;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.tapeline.stack.mailbox.Mailbox;

/** One address for all services, with the pages that belong to none of them. */
public final class Gateway implements AutoCloseable {
  private static final long PATIENCE_SECONDS = 30;
  private static final int LARGEST_HEADERS = 16 * 1024;
  private static final int IDLE_SECONDS = 120;

  private final Vertx vertx;

  private Gateway(Vertx vertx) {
    this.vertx = vertx;
  }

  /** Runs alone, for the container set; addresses come from {@code TAPELINE_<SERVICE>_URL}. */
  public static void main(String[] args) throws IOException {
    Map<String, String> env = System.getenv();
    Map<String, String> addresses =
        Map.of(
            "sizing", env.getOrDefault("TAPELINE_SIZING_URL", "http://sizing-service:8081"),
            "fitting", env.getOrDefault("TAPELINE_FITTING_URL", "http://fitting-service:8082"),
            "inventory",
                env.getOrDefault("TAPELINE_INVENTORY_URL", "http://inventory-service:8083"),
            "notify", env.getOrDefault("TAPELINE_NOTIFY_URL", "http://notify-service:8084"));
    int port = Integer.parseInt(env.getOrDefault("TAPELINE_PORT", "8080"));
    String mail = env.get("TAPELINE_MAIL_DIR");
    Mailbox mailbox = mail == null ? null : new Mailbox(Path.of(mail));
    start("0.0.0.0", port, addresses, mailbox);
    System.out.println("The gateway listens on port " + port);
  }

  /**
   * @param addresses of the services by name, such as {@code http://127.0.0.1:8081}
   * @param mailbox what the mail catcher stored; {@code null} where there is none
   */
  public static Gateway start(String host, int port, Map<String, String> addresses, Mailbox mailbox)
      throws IOException {
    Vertx vertx = Vertx.vertx();
    Pages pages = new Pages();
    Router router = Router.router(vertx);
    router.route().handler(SecurityHeaders::add);
    new Assets().mount(router);
    new SignIn(pages).mount(router);
    new ChainPage(vertx, addresses, pages).mount(router);
    Optional.ofNullable(mailbox).ifPresent(box -> new MailboxPages(box, pages).mount(router));
    addresses.forEach((service, address) -> Forwarding.mount(vertx, router, service, address));
    router.get("/").handler(context -> pages.send(context, "home", Map.of()));
    router.route().last().handler(context -> pages.notFound(context));
    HttpServerOptions options =
        new HttpServerOptions()
            .setHost(host)
            .setPort(port)
            .setMaxHeaderSize(LARGEST_HEADERS)
            .setIdleTimeout(IDLE_SECONDS)
            .setCompressionSupported(false);
    HttpServer server = vertx.createHttpServer(options).requestHandler(router);
    Gateway gateway = new Gateway(vertx);
    try {
      server
          .listen()
          .toCompletionStage()
          .toCompletableFuture()
          .get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (ExecutionException | TimeoutException e) {
      gateway.close();
      throw new IOException("The gateway cannot listen on port " + port + ": " + e.getMessage(), e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted", e);
    }
    return gateway;
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
