package org.tapeline.stack.gateway;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tapeline.stack.mailbox.Mailbox;

/**
 * Where the gateway listens and what lies behind it.
 *
 * @param addresses of the services by name, such as {@code http://127.0.0.1:8081}
 * @param publicAddress under which browsers see the gateway, where that is not what they ask for:
 *     behind a proxy that ends TLS
 * @param mailbox what the mail catcher stored, where there is one
 */
public record GatewaySettings(
    String host,
    int port,
    Map<String, String> addresses,
    Optional<URI> publicAddress,
    Optional<Mailbox> mailbox) {
  private static final List<String> SERVICES = List.of("sizing", "fitting", "inventory", "notify");
  private static final int FIRST_SERVICE_PORT = 8081;

  public GatewaySettings {
    addresses = Map.copyOf(addresses);
  }

  /**
   * From {@code TAPELINE_PORT}, {@code TAPELINE_SIZING_URL} and so on, {@code TAPELINE_PUBLIC_URL}
   * and {@code TAPELINE_MAIL_DIR}.
   *
   * @throws IllegalArgumentException for an address that is none
   */
  static GatewaySettings from(Map<String, String> environment) throws IOException {
    Map<String, String> addresses = new LinkedHashMap<>();
    for (String service : SERVICES) {
      String usual =
          "http://" + service + "-service:" + (FIRST_SERVICE_PORT + SERVICES.indexOf(service));
      String variable = "TAPELINE_" + service.toUpperCase(java.util.Locale.ROOT) + "_URL";
      addresses.put(service, environment.getOrDefault(variable, usual));
    }
    String mail = environment.getOrDefault("TAPELINE_MAIL_DIR", "");
    return new GatewaySettings(
        environment.getOrDefault("TAPELINE_HOST", "0.0.0.0"),
        Integer.parseInt(environment.getOrDefault("TAPELINE_PORT", "8080")),
        addresses,
        Optional.ofNullable(environment.get("TAPELINE_PUBLIC_URL"))
            .filter(url -> !url.isBlank())
            .map(URI::create),
        mail.isBlank() ? Optional.empty() : Optional.of(new Mailbox(Path.of(mail))));
  }
}
