package org.tapeline.stack.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LauncherTest {
  @TempDir Path root;
  private final List<Process> started = new ArrayList<>();

  @AfterEach
  void stop() {
    started.forEach(Process::destroyForcibly);
  }

  @Test
  @DisplayName("A port that is taken is named, with the way to choose another")
  void saysWhichPortIsTaken() throws Exception {
    try (ServerSocket taken = portOfAGateway()) {
      Run run = launch(Integer.toString(taken.getLocalPort()));
      assertThat(run.status).isEqualTo(1);
      assertThat(run.output)
          .contains("Port " + taken.getLocalPort() + " (gateway) is in use")
          .contains("TAPELINE_PORT=");
    }
  }

  @Test
  @DisplayName("A port that cannot be one is refused, not replaced by another")
  void refusesWhatIsNoPort() throws Exception {
    Run run = launch("eighty");
    assertThat(run.status).isEqualTo(1);
    assertThat(run.output).contains("TAPELINE_PORT must be a number");
    assertThat(Ports.chosen("70000")).isEmpty();
    assertThat(Ports.chosen("60000")).as("the servers' ports lie 7000 above").isEmpty();
    assertThat(Ports.chosen("9080")).contains(Ports.from(9080));
  }

  @Test
  @DisplayName("When a service is not built, all that was started is stopped and the status is 1")
  void stopsWhatItStarted() throws Exception {
    int port;
    try (ServerSocket free = portOfAGateway()) {
      port = free.getLocalPort();
    }
    Run run = launch(Integer.toString(port));
    assertThat(run.output).contains("ok  PostgreSQL", "ok  Kafka", "sizing-service is not built");
    assertThat(run.status).isEqualTo(1);
    assertThat(Ports.from(port).taken()).isEmpty();
  }

  @Test
  @DisplayName("What an earlier run left is ended; a process that only got its number is not")
  void endsOnlyItsOwn() throws Exception {
    Path data = Files.createDirectories(root.resolve("data"));
    Path file = Files.createFile(data.resolve("read-by-ours"));
    Process ours = process("tail", "-f", file.toString());
    Process foreign = process("tail", "-f", "/dev/null");
    Files.write(data.resolve("pids"), List.of("" + ours.pid(), "" + foreign.pid(), "not a pid"));
    new EarlierRun(data).end();
    assertThat(ours.waitFor(10, TimeUnit.SECONDS)).isTrue();
    assertThat(foreign.isAlive()).isTrue();
    assertThat(data.resolve("pids")).doesNotExist();
  }

  /** One for which the servers' ports exist too. */
  private static ServerSocket portOfAGateway() throws IOException {
    for (int port = 20_080; port <= Ports.LAST; port += 10) {
      if (Ports.from(port).taken().isEmpty()) {
        return new ServerSocket(port, 1, InetAddress.getLoopbackAddress());
      }
    }
    throw new IOException("No port is free");
  }

  private record Run(int status, String output) {}

  private Run launch(String port) throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Launcher.class.getName(),
            root.toString());
    builder.environment().put("TAPELINE_PORT", port);
    Process launcher = builder.redirectErrorStream(true).start();
    started.add(launcher);
    String output = new String(launcher.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(launcher.waitFor(60, TimeUnit.SECONDS)).isTrue();
    return new Run(launcher.exitValue(), output);
  }

  private Process process(String... command) throws IOException {
    Process process = new ProcessBuilder(command).start();
    started.add(process);
    return process;
  }
}
