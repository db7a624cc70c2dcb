package org.tapeline.journal.quarkus.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.logging.Level;
import java.util.logging.LogRecord;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoAddressesTest {
  private static final String SERVER = "io.quarkus.vertx.http.runtime.QuarkusErrorHandler";

  @ParameterizedTest
  @DisplayName("A failed request is logged without what may be a token or a name")
  @CsvSource({
    "/notify/n/eyJub3RpY2UiOi.k3Jz, /notify/n/...",
    "/notify/n?of=eyJub3RpY2UiOi.k3Jz, /notify/n/...",
    "/inventory/search?q=Quillfeather, /inventory/search/...",
    "/fitting/sideline, /fitting/sideline"
  })
  void shortens(String address, String logged) {
    assertThat(line(SERVER, address)).isEqualTo("HTTP Request to " + logged + " failed");
  }

  @ParameterizedTest
  @DisplayName("What else is logged stays as it is")
  @CsvSource({"org.tapeline.journal.inbox.Inbox, /a/b/c"})
  void leaves(String logger, String words) {
    assertThat(line(logger, words)).isEqualTo("HTTP Request to " + words + " failed");
  }

  private static String line(String logger, String parameter) {
    LogRecord line = new LogRecord(Level.SEVERE, "HTTP Request to %s failed");
    line.setLoggerName(logger);
    line.setParameters(new Object[] {parameter});
    assertThat(new NoAddresses().isLoggable(line)).isTrue();
    return line.getMessage().formatted(line.getParameters());
  }
}
