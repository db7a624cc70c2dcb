package org.tapeline.notify.whole;

import com.fasterxml.jackson.databind.JsonNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import org.tapeline.journal.EventJson;

/**
 * A small gateway for text messages, over real HTTP, that keeps idempotency keys as a good one
 * does. A test may take it down and up again, and say how it answers next.
 */
public final class TextGateway implements QuarkusTestResourceLifecycleManager {

  /**
   * How it answers one request.
   *
   * @param keeps whether it takes the message all the same
   * @param slow whether it answers only after the sender's patience is over
   */
  record Answer(int status, Map<String, String> headers, boolean keeps, boolean slow) {
    static Answer of(int status) {
      return new Answer(status, Map.of(), false, false);
    }

    static Answer busy(int seconds) {
      return new Answer(429, Map.of("Retry-After", Integer.toString(seconds)), false, false);
    }

    static Answer takenButSlow() {
      return new Answer(202, Map.of(), true, true);
    }
  }

  /** A message that it took, once for each key. */
  record Message(String key, String to, String body, Instant at) {}

  /** A request as it came. */
  record Request(
      String method, String key, String login, String timestamp, String signature, byte[] body) {}

  private static final List<Message> MESSAGES = Collections.synchronizedList(new ArrayList<>());
  private static final List<Request> REQUESTS = Collections.synchronizedList(new ArrayList<>());
  private static final Set<String> KEYS = Collections.synchronizedSet(new HashSet<>());
  private static final Queue<Answer> NEXT = new ArrayDeque<>();
  private static final Semaphore SLOW = new Semaphore(0);
  private static int port;
  private static HttpServer server;

  @Override
  public Map<String, String> start() {
    up();
    return Map.of("tapeline.text.url", "http://127.0.0.1:" + port + "/messages");
  }

  @Override
  public void stop() {
    down();
  }

  static synchronized void up() {
    if (server != null) {
      return;
    }
    try {
      server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
      server.setExecutor(Executors.newVirtualThreadPerTaskExecutor());
      server.createContext("/messages", TextGateway::handle);
      server.start();
      port = server.getAddress().getPort();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static synchronized void down() {
    if (server != null) {
      server.stop(0);
      server = null;
    }
  }

  /** How it answers the next requests, before it is its usual self again. */
  static void next(Answer... answers) {
    synchronized (NEXT) {
      SLOW.drainPermits();
      NEXT.addAll(List.of(answers));
    }
  }

  /** Lets slow answers go. */
  static void letGo() {
    SLOW.release(100);
  }

  static List<Message> to(String number) {
    synchronized (MESSAGES) {
      return MESSAGES.stream().filter(m -> m.to().equals(number)).toList();
    }
  }

  static List<Request> requests(String key) {
    synchronized (REQUESTS) {
      return REQUESTS.stream().filter(r -> r.key().equals(key)).toList();
    }
  }

  private static void handle(HttpExchange exchange) throws IOException {
    byte[] body = exchange.getRequestBody().readAllBytes();
    String key = exchange.getRequestHeaders().getFirst("Idempotency-Key");
    REQUESTS.add(
        new Request(
            exchange.getRequestMethod(),
            key,
            exchange.getRequestHeaders().getFirst("Authorization"),
            exchange.getRequestHeaders().getFirst("X-Timestamp"),
            exchange.getRequestHeaders().getFirst("X-Signature"),
            body));
    Answer answer;
    synchronized (NEXT) {
      answer = NEXT.isEmpty() ? new Answer(202, Map.of(), true, false) : NEXT.poll();
    }
    if (answer.keeps() && KEYS.add(key)) {
      JsonNode json = EventJson.MAPPER.readTree(body);
      MESSAGES.add(
          new Message(key, json.path("to").asText(), json.path("body").asText(), Instant.now()));
    }
    if (answer.slow()) {
      SLOW.acquireUninterruptibly();
    }
    answer.headers().forEach((name, value) -> exchange.getResponseHeaders().add(name, value));
    byte[] said = ("{\"id\":\"gw-" + key + "\"}").getBytes(StandardCharsets.UTF_8);
    exchange.sendResponseHeaders(answer.status(), said.length);
    exchange.getResponseBody().write(said);
    exchange.close();
  }
}
