package org.tapeline.notify.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.channel.SendOutcome;

@DisplayName("An answer of the text gateway")
class GatewayAnswersTest {
  private static final Instant NOW = Instant.parse("2025-09-12T17:00:00Z");

  private static SendOutcome of(int status) {
    return GatewayAnswers.of(status, Optional.empty(), Optional.empty(), NOW);
  }

  private static SendOutcome busy(String retryAfter) {
    return GatewayAnswers.of(429, Optional.empty(), Optional.of(retryAfter), NOW);
  }

  @Test
  @DisplayName("of 2xx means that it took the message, under an id of its own")
  void taken() {
    assertThat(GatewayAnswers.of(202, Optional.of("m-1"), Optional.empty(), NOW))
        .isEqualTo(new SendOutcome.Taken(Optional.of("m-1")));
  }

  @Test
  @DisplayName("of 429 asks for a pause, in seconds, to a date, or for a while")
  void pause() {
    assertThat(busy("7")).isEqualTo(new SendOutcome.Busy("429", Duration.ofSeconds(7)));
    assertThat(busy("Fri, 12 Sep 2025 17:00:30 GMT"))
        .isEqualTo(new SendOutcome.Busy("429", Duration.ofSeconds(30)));
    assertThat(busy("Fri, 12 Sep 2025 16:00:00 GMT"))
        .isEqualTo(new SendOutcome.Busy("429", Duration.ZERO));
    assertThat(busy("soon")).isEqualTo(new SendOutcome.Busy("429", Duration.ofSeconds(5)));
  }

  @Test
  @DisplayName("of 5xx, or about our key, is the channel's trouble and not the person's")
  void down() {
    for (int status : new int[] {301, 401, 403, 500, 502, 503}) {
      assertThat(of(status)).isEqualTo(new SendOutcome.Down(Integer.toString(status)));
    }
  }

  @Test
  @DisplayName("of 4xx is for good, unless the first try is still at work there")
  void refused() {
    assertThat(of(400)).isEqualTo(new SendOutcome.MessageRefused("400"));
    assertThat(of(422)).isEqualTo(new SendOutcome.MessageRefused("422"));
    assertThat(of(409)).isEqualTo(new SendOutcome.Failed("409"));
  }
}
