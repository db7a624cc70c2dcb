package org.tapeline.stack.launch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.tapeline.servers.KafkaAlone;

/** Kafka as a process of its own, for those who want to kill it; it ends with the launcher. */
final class BrokerProcess implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private final Process process;
  private final Path log;

  private BrokerProcess(Process process, Path log) {
    this.process = process;
    this.log = log;
  }

  /**
   * Starts it without waiting. It ends with the calling thread, which so must live on.
   *
   * @param data folder of this stack, named on the command line as for services
   */
  static BrokerProcess start(Path data, Ports ports) throws IOException {
    Path log = Files.createDirectories(data.resolve("log")).resolve("kafka.log");
    List<String> command = new ArrayList<>(ServiceProcess.endsWithLauncher());
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx256m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
    command.addAll(List.of("-Dtapeline.service=kafka", "-Dtapeline.data=" + data));
    command.add(KafkaAlone.class.getName());
    command.add(data.resolve("kafka").toString());
    command.add(Integer.toString(ports.kafka()));
    command.add(Integer.toString(ports.kafkaController()));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    // A command line as long as the class path would not be shown whole to who looks for it.
    builder.environment().put("CLASSPATH", System.getProperty("java.class.path"));
    return new BrokerProcess(builder.redirectOutput(log.toFile()).start(), log);
  }

  /**
   * @throws IOException when it does not start
   */
  void awaitReady() throws IOException {
    Instant until = Instant.now().plus(PATIENCE);
    while (!Files.readString(log, StandardCharsets.UTF_8).contains(KafkaAlone.READY)) {
      if (!process.isAlive() || Instant.now().isAfter(until)) {
        throw new IOException("The broker did not start; its log: " + log);
      }
      try {
        process.waitFor(100, TimeUnit.MILLISECONDS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IOException("Interrupted", e);
      }
    }
  }

  long pid() {
    return process.pid();
  }

  @Override
  public void close() {
    process.destroy();
    try {
      if (process.waitFor(15, TimeUnit.SECONDS)) {
        return;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    process.destroyForcibly();
  }
}
