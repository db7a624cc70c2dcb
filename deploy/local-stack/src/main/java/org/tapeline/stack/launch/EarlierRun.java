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

  private final Path data;
  private final Path pids;
  private final Path postgresPid;

  EarlierRun(Path data) {
    this.data = data;
    this.pids = data.resolve("pids");
    this.postgresPid = data.resolve("postgres/postmaster.pid");
  }

  void remember(List<Long> processes) throws IOException {
    Files.write(pids, processes.stream().map(Object::toString).toList());
  }

  void forget() throws IOException {
    Files.deleteIfExists(pids);
  }

  /** Ends what is left: the services first, so that the database has nobody to wait for. */
  void end() throws IOException {
    if (Files.exists(pids)) {
      for (String pid : Files.readAllLines(pids)) {
        endIfOurs(pid, "TERM");
      }
    }
    if (Files.exists(postgresPid)) {
      List<String> lines = Files.readAllLines(postgresPid);
      // INT asks PostgreSQL to end now and in order; at TERM it would wait for its clients.
      endIfOurs(lines.isEmpty() ? "" : lines.getFirst().strip(), "INT");
      Files.deleteIfExists(postgresPid);
    }
    forget();
  }

  /** A process id is given out again: only one that was started with our data folder is ours. */
  private boolean ours(String pid) throws IOException {
    Path commandLine = Path.of("/proc", pid, "cmdline");
    return pid.matches("[1-9][0-9]*")
        && Files.exists(commandLine)
        && Files.readString(commandLine).contains(data.toString());
  }

  private void endIfOurs(String pid, String signal) throws IOException {
    ProcessHandle left = ours(pid) ? ProcessHandle.of(Long.parseLong(pid)).orElse(null) : null;
    if (left == null) {
      return;
    }
    new ProcessBuilder("kill", "-" + signal, pid).inheritIO().start();
    try {
      left.onExit().get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (TimeoutException | ExecutionException e) {
      left.destroyForcibly();
    }
  }
}
