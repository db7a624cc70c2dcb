package org.tapeline.acceptance;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import io.opentelemetry.proto.collector.trace.v1.ExportTraceServiceRequest;
import io.opentelemetry.proto.trace.v1.ResourceSpans;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.HexFormat;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executors;
import java.util.zip.GZIPInputStream;

/** Takes spans over OTLP, as the collector of whoever runs the services would. */
final class TraceReceiver {
  private static final HexFormat HEX = HexFormat.of();

  private final HttpServer server;
  private final Queue<Seen> spans = new ConcurrentLinkedQueue<>();

  /**
   * A span.
   *
   * @param parent empty for the first of a trace
   */
  record Seen(String service, String trace, String span, String parent, String name) {}

  private TraceReceiver(HttpServer server) {
    this.server = server;
  }

  static TraceReceiver start() throws IOException {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    TraceReceiver receiver = new TraceReceiver(server);
    server.setExecutor(
        Executors.newCachedThreadPool(work -> Thread.ofPlatform().daemon().unstarted(work)));
    server.createContext("/v1/traces", receiver::take);
    server.start();
    return receiver;
  }

  String address() {
    return "http://127.0.0.1:" + server.getAddress().getPort();
  }

  List<Seen> ofTrace(String trace) {
    return spans.stream().filter(span -> span.trace().equals(trace)).toList();
  }

  private void take(HttpExchange exchange) throws IOException {
    boolean packed = "gzip".equals(exchange.getRequestHeaders().getFirst("Content-Encoding"));
    try (InputStream body = exchange.getRequestBody();
        InputStream plain = packed ? new GZIPInputStream(body) : body) {
      ExportTraceServiceRequest.parseFrom(plain).getResourceSpansList().forEach(this::note);
    }
    exchange.getResponseHeaders().set("Content-Type", "application/x-protobuf");
    exchange.sendResponseHeaders(200, -1);
    exchange.close();
  }

  private void note(ResourceSpans of) {
    String service =
        of.getResource().getAttributesList().stream()
            .filter(attribute -> attribute.getKey().equals("service.name"))
            .map(attribute -> attribute.getValue().getStringValue())
            .findFirst()
            .orElse("");
    of.getScopeSpansList().stream()
        .flatMap(scope -> scope.getSpansList().stream())
        .map(
            span ->
                new Seen(
                    service,
                    HEX.formatHex(span.getTraceId().toByteArray()),
                    HEX.formatHex(span.getSpanId().toByteArray()),
                    HEX.formatHex(span.getParentSpanId().toByteArray()),
                    span.getName()))
        .forEach(spans::add);
  }
}
