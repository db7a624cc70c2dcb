package org.tapeline.servers;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import kafka.server.KafkaConfig;
import kafka.server.KafkaRaftServer;
import kafka.tools.StorageTool;
import org.apache.kafka.common.Uuid;
import org.apache.kafka.common.utils.Time;

/** A single Kafka node in KRaft mode inside this process, kept small. */
public final class LocalKafka implements AutoCloseable {
  private final KafkaRaftServer server;
  private final int port;
  private final Path temporary;

  private LocalKafka(KafkaRaftServer server, int port, Path temporary) {
    this.server = server;
    this.port = port;
    this.temporary = temporary;
  }

  /** A broker on free ports whose log goes when it is closed. */
  public static LocalKafka temporary() throws IOException {
    Path directory = Files.createTempDirectory("tapeline-kafka");
    return start(directory, Ports.free(), Ports.free(), directory);
  }

  /**
   * A broker that keeps its log.
   *
   * @param port for clients, on the loopback address
   * @param controllerPort for the broker's own controller
   */
  public static LocalKafka keeping(Path directory, int port, int controllerPort)
      throws IOException {
    Files.createDirectories(directory);
    return start(directory, port, controllerPort, null);
  }

  private static LocalKafka start(Path directory, int port, int controllerPort, Path temporary)
      throws IOException {
    Properties properties = settings(directory, port, controllerPort);
    Path log = directory.resolve("log");
    if (Files.notExists(log.resolve("meta.properties"))) {
      format(directory, properties);
    }
    KafkaRaftServer server =
        new KafkaRaftServer(KafkaConfig.fromProps(properties, false), Time.SYSTEM);
    server.startup();
    return new LocalKafka(server, port, temporary);
  }

  private static Properties settings(Path directory, int port, int controllerPort) {
    Properties p = new Properties();
    p.setProperty("process.roles", "broker,controller");
    p.setProperty("node.id", "1");
    p.setProperty("controller.quorum.voters", "1@127.0.0.1:" + controllerPort);
    p.setProperty(
        "listeners", "PLAINTEXT://127.0.0.1:" + port + ",CONTROLLER://127.0.0.1:" + controllerPort);
    p.setProperty("advertised.listeners", "PLAINTEXT://127.0.0.1:" + port);
    p.setProperty("controller.listener.names", "CONTROLLER");
    p.setProperty("inter.broker.listener.name", "PLAINTEXT");
    p.setProperty("log.dirs", directory.resolve("log").toString());
    for (String internal : new String[] {"offsets.topic", "transaction.state.log"}) {
      p.setProperty(internal + ".replication.factor", "1");
      p.setProperty(internal + ".num.partitions", "1");
    }
    p.setProperty("transaction.state.log.min.isr", "1");
    p.setProperty("share.coordinator.state.topic.replication.factor", "1");
    p.setProperty("share.coordinator.state.topic.min.isr", "1");
    p.setProperty("share.coordinator.state.topic.num.partitions", "1");
    p.setProperty("default.replication.factor", "1");
    p.setProperty("group.initial.rebalance.delay.ms", "0");
    p.setProperty("num.network.threads", "2");
    p.setProperty("num.io.threads", "2");
    p.setProperty("background.threads", "2");
    p.setProperty("log.segment.bytes", "16777216");
    p.setProperty("log.cleaner.dedupe.buffer.size", "4194304");
    p.setProperty("auto.create.topics.enable", "false");
    return p;
  }

  private static void format(Path directory, Properties properties) throws IOException {
    Path file = directory.resolve("server.properties");
    try (var out = Files.newOutputStream(file)) {
      properties.store(out, "Written anew when the log is formatted");
    }
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
    String[] arguments = {"format", "-t", Uuid.randomUuid().toString(), "-c", file.toString()};
    if (StorageTool.execute(arguments, out) != 0) {
      throw new IOException("Kafka's log could not be formatted: " + said);
    }
  }

  public String bootstrapServers() {
    return "127.0.0.1:" + port;
  }

  @Override
  public void close() {
    server.shutdown();
    server.awaitShutdown();
    if (temporary != null) {
      delete(temporary);
    }
  }

  private static void delete(Path directory) {
    try (var files = Files.walk(directory)) {
      for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
