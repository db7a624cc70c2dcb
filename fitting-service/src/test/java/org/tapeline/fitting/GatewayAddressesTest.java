package org.tapeline.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The gateway's addresses, when nothing else is said,")
class GatewayAddressesTest {
  @Test
  @DisplayName("are known without asking the DNS, which would be asked for every request")
  void noNames() throws IOException {
    Properties properties = new Properties();
    String file = "fitting-service/src/main/resources/application.properties";
    try (InputStream in =
        Files.newInputStream(Path.of(System.getProperty("tapeline.root"), file))) {
      properties.load(in);
    }
    String said = properties.getProperty("quarkus.http.proxy.trusted-proxies");
    String usual = said.replaceFirst("^[^:]*:(.*)}$", "$1");
    // What is neither is taken for a name, an IPv6 address without a length too.
    assertThat(usual.split(",")).allMatch(a -> a.matches("[0-9.]+(/[0-9]+)?|[0-9a-f:]+/[0-9]+"));
  }
}
