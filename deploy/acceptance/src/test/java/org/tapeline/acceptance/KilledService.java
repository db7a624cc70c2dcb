package org.tapeline.acceptance;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** A service of a stack that a test started: killed, and started again as it was. */
final class KilledService {
  private final String service;
  private final Path data;
  private final List<String> command;
  private final File folder;
  private final Map<String, String> environment;

  private KilledService(String service, Path data, ProcessHandle running) throws IOException {
    this.service = service;
    this.data = data;
    Path proc = Path.of("/proc", Long.toString(running.pid()));
    command = List.of(parts(proc.resolve("cmdline")));
    folder = proc.resolve("cwd").toRealPath().toFile();
    environment = new HashMap<>();
    for (String line : parts(proc.resolve("environ"))) {
      int equals = line.indexOf('=');
      environment.put(line.substring(0, equals), line.substring(equals + 1));
    }
  }

  private static String[] parts(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\0");
  }

  /**
   * By SIGKILL, with no time to finish anything.
   *
   * @param service such as {@code fitting}
   * @param run the name of the stack's data, see {@link LocalRun#data}
   */
  static KilledService of(String service, String run) {
    Path data = LocalRun.data(run);
    ProcessHandle running =
        ProcessHandle.allProcesses()
            .filter(process -> is(process, service, data))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("No " + service + " service runs"));
    try {
      KilledService killed = new KilledService(service, data, running);
      running.destroyForcibly();
      running.onExit().get(30, TimeUnit.SECONDS);
      return killed;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException | ExecutionException | TimeoutException e) {
      throw new IllegalStateException("The " + service + " service did not end", e);
    }
  }

  private static boolean is(ProcessHandle process, String service, Path data) {
    List<String> said = process.info().arguments().map(List::of).orElse(List.of());
    return said.contains("-Dtapeline.service=" + service)
        && said.contains("-Dtapeline.data=" + data);
  }

  void startAgain() {
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder);
    builder.environment().clear();
    builder.environment().putAll(environment);
    File log = data.resolve("log/" + service + "-again.log").toFile();
    builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.appendTo(log));
    try {
      Process again = builder.start();
      Runtime.getRuntime().addShutdownHook(new Thread(again::destroy));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
