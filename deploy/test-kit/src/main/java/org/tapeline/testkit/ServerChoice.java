package org.tapeline.testkit;

import org.testcontainers.DockerClientFactory;

/** Containers or embedded servers, decided once a JVM and said aloud. */
final class ServerChoice {
  private static final boolean CONTAINERS = decide();

  private ServerChoice() {}

  static boolean containers() {
    return CONTAINERS;
  }

  static String setting(String name, String otherwise) {
    String property = System.getProperty(name);
    return property != null ? property : System.getenv().getOrDefault(name, otherwise);
  }

  private static boolean decide() {
    String wanted = setting("TAPELINE_TEST_SERVERS", "auto");
    boolean containers =
        switch (wanted) {
          case "containers" -> true;
          case "embedded" -> false;
          default -> DockerClientFactory.instance().isDockerAvailable();
        };
    System.out.println(
        "Test servers: " + (containers ? "containers (Testcontainers)" : "embedded") + ".");
    return containers;
  }
}
