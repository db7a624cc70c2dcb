package org.tapeline.servers;

import java.io.IOException;
import java.nio.file.Path;

/**
 * The broker as a process of its own, so that it can be killed, paused and started again without
 * anything else.
 */
public final class KafkaAlone {
  /** What it says once clients can reach it. */
  public static final String READY = "The broker listens on ";

  private KafkaAlone() {}

  /**
   * Arguments: the folder of its log, the port for clients, the port of its controller. Runs until
   * it is asked to stop.
   */
  public static void main(String[] args) throws IOException {
    LocalKafka kafka =
        LocalKafka.keeping(Path.of(args[0]), Integer.parseInt(args[1]), Integer.parseInt(args[2]));
    Runtime.getRuntime().addShutdownHook(new Thread(kafka::close));
    System.out.println(READY + kafka.bootstrapServers());
  }
}
