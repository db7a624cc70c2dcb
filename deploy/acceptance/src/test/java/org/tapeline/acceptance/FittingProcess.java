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

/** The fitting service of the stack that the tests started: killed, and started again as it was. */
final class FittingProcess {
  private static final String NAME = "-Dtapeline.service=fitting";

  private final List<String> command;
  private final File folder;
  private final Map<String, String> environment;

  private FittingProcess(ProcessHandle running) throws IOException {
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

  /** By SIGKILL, with no time to finish anything. */
  static FittingProcess kill() {
    ProcessHandle running =
        ProcessHandle.allProcesses()
            .filter(FittingProcess::ours)
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("No fitting service runs"));
    try {
      FittingProcess killed = new FittingProcess(running);
      running.destroyForcibly();
      running.onExit().get(30, TimeUnit.SECONDS);
      return killed;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException | ExecutionException | TimeoutException e) {
      throw new IllegalStateException("The fitting service did not end", e);
    }
  }

  private static boolean ours(ProcessHandle process) {
    String line = process.info().commandLine().orElse("");
    return line.contains(NAME) && line.contains("-Dtapeline.data=" + LocalRun.data("data"));
  }

  void startAgain() {
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder);
    builder.environment().clear();
    builder.environment().putAll(environment);
    File log = LocalRun.data("data").resolve("log/fitting-again.log").toFile();
    builder.redirectErrorStream(true).redirectOutput(log);
    try {
      Process again = builder.start();
      Runtime.getRuntime().addShutdownHook(new Thread(again::destroy));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
