package org.tapeline.stack.launch;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** One service as a process of its own, that ends with the launcher. */
final class ServiceProcess {
  private static final Path PARENT_DEATH_SIGNAL = Path.of("/usr/bin/setpriv");

  private final String name;
  private final int port;
  private final Path log;
  private final Process process;

  private ServiceProcess(String name, int port, Path log, Process process) {
    this.name = name;
    this.port = port;
    this.log = log;
    this.process = process;
  }

  /**
   * @param data folder of this stack; it stands on the command line so that a later run can tell
   *     its own processes from others
   * @throws IOException when the service has not been built
   */
  static ServiceProcess start(
      String name, int port, Path root, Path data, Map<String, String> environment)
      throws IOException {
    Path app = root.resolve(name + "-service/target/quarkus-app");
    Path log = Files.createDirectories(data.resolve("log")).resolve(name + ".log");
    if (Files.notExists(app.resolve("quarkus-run.jar"))) {
      throw new IOException(name + "-service is not built: " + app);
    }
    ProcessBuilder builder = new ProcessBuilder(command(name, app, data));
    builder.directory(app.toFile());
    builder.environment().putAll(environment);
    builder.environment().put("QUARKUS_HTTP_PORT", Integer.toString(port));
    builder.redirectErrorStream(true).redirectOutput(log.toFile());
    return new ServiceProcess(name, port, log, builder.start());
  }

  private static List<String> command(String name, Path app, Path data) {
    List<String> command = new ArrayList<>(endsWithLauncher());
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx192m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
    command.addAll(extraOptions());
    if (Files.exists(app.resolve("app-cds.jsa"))) {
      command.addAll(List.of("-XX:SharedArchiveFile=app-cds.jsa", "-Xshare:auto"));
    }
    // Only so that people find it among other processes.
    command.add("-Dtapeline.service=" + name);
    command.addAll(List.of("-Dtapeline.data=" + data, "-jar", "quarkus-run.jar"));
    return command;
  }

  /** A launcher that is killed cannot stop its children; the kernel tells them instead. */
  static List<String> endsWithLauncher() {
    return Files.isExecutable(PARENT_DEATH_SIGNAL)
        ? List.of(PARENT_DEATH_SIGNAL.toString(), "--pdeathsig", "TERM")
        : List.of();
  }

  /** What {@code TAPELINE_JAVA_OPTIONS} says comes last and wins: more memory, another compiler. */
  private static List<String> extraOptions() {
    String said = System.getenv().getOrDefault("TAPELINE_JAVA_OPTIONS", "").strip();
    return said.isEmpty() ? List.of() : List.of(said.split("\\s+"));
  }

  String name() {
    return name;
  }

  long pid() {
    return process.pid();
  }

  boolean alive() {
    return process.isAlive();
  }

  void whenEnded(Runnable action) {
    process.onExit().thenRun(action);
  }

  boolean ready(HttpClient http) {
    URI health = URI.create("http://127.0.0.1:" + port + "/" + name + "/q/health/ready");
    try {
      return http.send(
                  HttpRequest.newBuilder(health).timeout(Duration.ofSeconds(2)).build(),
                  HttpResponse.BodyHandlers.discarding())
              .statusCode()
          == 200;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** The end of what it said, for a person who has to find out why it did not start. */
  String lastWords(int lines) {
    try {
      List<String> all = Files.readAllLines(log);
      return String.join("\n", all.subList(Math.max(0, all.size() - lines), all.size()));
    } catch (IOException e) {
      return "(no log at " + log + ")";
    }
  }

  void askToStop() {
    process.destroy();
  }

  void awaitStop(Duration patience) throws InterruptedException {
    if (!process.waitFor(patience.toMillis(), TimeUnit.MILLISECONDS)) {
      process.destroyForcibly().waitFor();
    }
  }
}
