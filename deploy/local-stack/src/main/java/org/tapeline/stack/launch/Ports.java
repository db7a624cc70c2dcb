package org.tapeline.stack.launch;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The ports of the local stack, all on the loopback address.
 *
 * @param gateway the one that people use; the others follow from {@code TAPELINE_PORT} too
 */
public record Ports(
    int gateway,
    int sizing,
    int fitting,
    int inventory,
    int notices,
    int smtp,
    int postgres,
    int kafka,
    int kafkaController) {
  public static final int DEFAULT = 8080;

  /** The last port that the gateway can have: the servers' ports lie above it. */
  public static final int LAST = 65_535 - 7_002;

  /** Empty when the text is not a port that the gateway can have. */
  static Optional<Ports> chosen(String text) {
    return Optional.of(text)
        .filter(t -> t.matches("[1-9][0-9]{3,4}"))
        .map(Integer::parseInt)
        .filter(port -> port >= 1024 && port <= LAST)
        .map(Ports::from);
  }

  /** The gateway's port and the ones after it, the servers 7000 above. */
  public static Ports from(int gateway) {
    int servers = gateway + 7000;
    return new Ports(
        gateway,
        gateway + 1,
        gateway + 2,
        gateway + 3,
        gateway + 4,
        gateway + 5,
        servers,
        servers + 1,
        servers + 2);
  }

  /** The first port that somebody else uses, with what we would use it for. */
  public Optional<String> taken() {
    return all().entrySet().stream()
        .filter(port -> org.tapeline.servers.Ports.taken(port.getValue()))
        .map(port -> "Port " + port.getValue() + " (" + port.getKey() + ") is in use")
        .findFirst();
  }

  /** The port of a service, by its name. */
  public int of(String service) {
    return all().get(service);
  }

  private Map<String, Integer> all() {
    Map<String, Integer> all = new LinkedHashMap<>();
    all.put("gateway", gateway);
    all.put("sizing", sizing);
    all.put("fitting", fitting);
    all.put("inventory", inventory);
    all.put("notify", notices);
    all.put("mail", smtp);
    all.put("PostgreSQL", postgres);
    all.put("Kafka", kafka);
    all.put("Kafka controller", kafkaController);
    return all;
  }
}
