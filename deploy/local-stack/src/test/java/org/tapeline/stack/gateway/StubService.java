package org.tapeline.stack.gateway;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** A service behind the gateway, of which the test decides what it answers. */
final class StubService implements AutoCloseable {
  private final HttpServer server;
  private final ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor();

  /** What reached it, as method, path and query. */
  final List<String> asked = new CopyOnWriteArrayList<>();

  /** The headers of the last request. */
  volatile Map<String, List<String>> headers = Map.of();

  private StubService(HttpServer server) {
    this.server = server;
  }

  static StubService start(HttpHandler answer) throws IOException {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    StubService stub = new StubService(server);
    server.setExecutor(stub.threads);
    server.createContext(
        "/",
        exchange -> {
          stub.asked.add(exchange.getRequestMethod() + " " + exchange.getRequestURI());
          stub.headers = Map.copyOf(exchange.getRequestHeaders());
          answer.handle(exchange);
        });
    server.start();
    return stub;
  }

  static void answer(HttpExchange exchange, int status, String type, String body)
      throws IOException {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    exchange.getResponseHeaders().set("Content-Type", type);
    exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
    try (var out = exchange.getResponseBody()) {
      out.write(bytes);
    }
  }

  String address() {
    return "http://127.0.0.1:" + server.getAddress().getPort();
  }

  @Override
  public void close() {
    server.stop(0);
    threads.close();
  }
}
