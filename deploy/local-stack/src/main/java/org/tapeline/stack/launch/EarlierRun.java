package org.tapeline.stack.launch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * What a run that was killed may have left behind: its services and the database server. They are
 * found by the process ids that it wrote down, and ended only when they still are what they were.
 */
final class EarlierRun {
  private static final Duration PATIENCE = Duration.ofSeconds(15);

  private final Path pids;
  private final Path postgresPid;

  EarlierRun(Path data) {
    this.pids = data.resolve("pids");
    this.postgresPid = data.resolve("postgres/postmaster.pid");
  }

  void remember(List<ServiceProcess> services) throws IOException {
    Files.write(pids, services.stream().map(s -> Long.toString(s.pid())).toList());
  }

  void forget() throws IOException {
    Files.deleteIfExists(pids);
  }

  /** Ends what is left; a database that is ended this way recovers from its log. */
  void end() throws IOException {
    if (Files.exists(pids)) {
      for (String pid : Files.readAllLines(pids)) {
        endIf(pid, "quarkus-run.jar");
      }
    }
    if (Files.exists(postgresPid)) {
      List<String> lines = Files.readAllLines(postgresPid);
      endIf(lines.isEmpty() ? "" : lines.getFirst().strip(), "postgres");
      Files.deleteIfExists(postgresPid);
    }
    forget();
  }

  private static void endIf(String pid, String isA) throws IOException {
    if (!pid.matches("[1-9][0-9]*")) {
      return;
    }
    Path commandLine = Path.of("/proc", pid, "cmdline");
    if (Files.notExists(commandLine) || !Files.readString(commandLine).contains(isA)) {
      return;
    }
    ProcessHandle left = ProcessHandle.of(Long.parseLong(pid)).orElse(null);
    if (left == null) {
      return;
    }
    left.destroy();
    try {
      left.onExit().get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (TimeoutException | ExecutionException e) {
      left.destroyForcibly();
    }
  }
}
