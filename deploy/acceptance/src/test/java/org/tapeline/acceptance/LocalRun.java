package org.tapeline.acceptance;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.tapeline.stack.launch.Ports;

/** A stack that {@code deploy/start} runs, with data and ports of its own; it ends with the JVM. */
final class LocalRun implements AutoCloseable {
  private final Process process;
  private final String address;

  private LocalRun(Process process, String address) {
    this.process = process;
    this.address = address;
  }

  /**
   * @param data name of the folder for its data, under {@code target}
   * @param environment what a user would set before calling {@code deploy/start}
   * @throws IOException with all that it said when it did not start
   */
  static LocalRun start(String data, Map<String, String> environment, String... options)
      throws IOException {
    Path root = Tapeline.ROOT;
    int port = freePort();
    List<String> command = new ArrayList<>(List.of(root.resolve("deploy/start").toString()));
    command.addAll(List.of(options));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().putAll(environment);
    builder.environment().put("TAPELINE_PORT", Integer.toString(port));
    builder.environment().put("TAPELINE_DATA", data(data).toString());
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    LocalRun run = new LocalRun(builder.start(), "http://localhost:" + port);
    Runtime.getRuntime().addShutdownHook(new Thread(run::close));
    run.awaitGreeting();
    return run;
  }

  /** Where a stack of that name has its data. */
  static Path data(String name) {
    return Tapeline.ROOT.resolve("deploy/acceptance/target").resolve(name);
  }

  String address() {
    return address;
  }

  /** The address of a service itself, for what the gateway does not pass on. */
  String serviceAddress(String service) {
    int port = Ports.from(URI.create(address).getPort()).of(service);
    return "http://localhost:" + port + "/" + service;
  }

  /** Whether that service says that it is ready. */
  boolean ready(String service) {
    URI health = URI.create(serviceAddress(service) + "/q/health/ready");
    try (HttpClient http = HttpClient.newHttpClient()) {
      HttpRequest request = HttpRequest.newBuilder(health).build();
      return http.send(request, HttpResponse.BodyHandlers.discarding()).statusCode() == 200;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private void awaitGreeting() throws IOException {
    BufferedReader output =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    List<String> said = new ArrayList<>();
    for (String line = output.readLine(); line != null; line = output.readLine()) {
      said.add(line);
      if (line.contains("Ctrl-C stops everything")) {
        Thread.ofVirtual().start(() -> passOn(output));
        return;
      }
    }
    throw new IOException("deploy/start did not start:\n" + String.join("\n", said));
  }

  /** What it says later, so that it never waits for a reader. */
  private static void passOn(BufferedReader output) {
    try {
      for (String line = output.readLine(); line != null; line = output.readLine()) {
        System.out.println(line);
      }
    } catch (IOException e) {
      System.out.println("The stack says no more: " + e.getMessage());
    }
  }

  private static int freePort() throws IOException {
    for (int port = 30_080; port <= Ports.LAST; port += 10) {
      if (Ports.from(port).taken().isEmpty()) {
        return port;
      }
    }
    throw new IOException("No port is free");
  }

  @Override
  public void close() {
    process.destroy();
    try {
      if (!process.waitFor(60, TimeUnit.SECONDS)) {
        process.destroyForcibly();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
