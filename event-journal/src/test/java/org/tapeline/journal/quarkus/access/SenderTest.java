package org.tapeline.journal.quarkus.access;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What a browser tells of the page that sends something")
class SenderTest {
  private static final String HOST = "helmets.example.org";

  @ParameterizedTest(name = "{0} {1} at {2}")
  @CsvSource({
    "same-origin, https://helmets.example.org, helmets.example.org",
    "same-origin, null, helmets.example.org",
    "none, '', helmets.example.org",
    "'', '', helmets.example.org",
    "'', https://helmets.example.org, helmets.example.org",
    "'', https://Helmets.Example.Org, helmets.example.org:443",
    "'', http://helmets.example.org, helmets.example.org:80",
    "'', https://helmets.example.org, helmets.example.org:80",
    "'', http://localhost:8080, localhost:8080"
  })
  @DisplayName("makes it our own")
  void own(String fetchSite, String origin, String host) {
    assertThat(new Sender(fetchSite, origin, host).isForeign()).isFalse();
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "cross-site, https://helmets.example.org",
    "same-site, https://helmets.example.org",
    "cross-site, ''",
    "something-new, ''",
    "'', null",
    "'', https://shop.example.org",
    "'', https://helmets.example.org.evil.example",
    "'', https://evil.example/helmets.example.org",
    "'', https://helmets.example.org:8443",
    "'', helmets"
  })
  @DisplayName("makes it another's")
  void anothers(String fetchSite, String origin) {
    assertThat(new Sender(fetchSite, origin, HOST).isForeign()).isTrue();
  }
}
