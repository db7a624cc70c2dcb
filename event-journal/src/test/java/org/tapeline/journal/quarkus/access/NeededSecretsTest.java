package org.tapeline.journal.quarkus.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The secrets that a service needs")
class NeededSecretsTest {
  private static final String KEY = "tapeline.link.key";
  private static final String DATABASE = "quarkus.datasource.password";
  private static final String LONG = "0123456789abcdef0123456789abcdef";

  @Test
  @DisplayName("are all there")
  void there() {
    assertThat(wrong(Map.of(KEY, LONG, DATABASE, "short"))).isEmpty();
  }

  @Test
  @DisplayName("are missed by the name that they have in the environment")
  void missing() {
    assertThat(wrong(Map.of(KEY, "  ")))
        .containsExactly(
            "TAPELINE_LINK_KEY is not set.", "QUARKUS_DATASOURCE_PASSWORD is not set.");
  }

  @Test
  @DisplayName("are not those of an example, nor too short, and are not said again")
  void none() {
    assertThat(wrong(Map.of(KEY, "put-32-or-more-random-characters-here", DATABASE, "put-it-here")))
        .containsExactly(
            "TAPELINE_LINK_KEY is still the example's.",
            "QUARKUS_DATASOURCE_PASSWORD is still the example's.");
    assertThat(wrong(Map.of(KEY, "guessable", DATABASE, "short")))
        .containsExactly("TAPELINE_LINK_KEY has fewer than 32 characters.");
  }

  private static List<String> wrong(Map<String, String> given) {
    return NeededSecrets.wrong(
        List.of(KEY, DATABASE), name -> Optional.ofNullable(given.get(name)));
  }
}
