package org.tapeline.testkit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The contracts of events")
class EventContractsTest {
  private static final EventContracts CONTRACTS = EventContracts.load();
  private static final String SENT = "org.tapeline.notify.notice-sent.v1";
  private static final String FAILED = "org.tapeline.fitting.fit-failed.v1";
  private static final String RAISED = "org.tapeline.notify.notice-raised.v1";

  record Sent(UUID notice, String recipient, int attempt, Instant at) {}

  record MadeUp(UUID notice, String subject) {}

  record OfAnotherType(boolean attempt) {}

  record NotSaid(UUID refitCase) {}

  record Failed(List<NeedOfTwoWords> needs) {}

  record NeedOfTwoWords(String kind, Optional<String> colour) {}

  record FailedWithNumbers(List<Integer> failedChecks) {}

  record NumberPerhaps(Optional<Integer> tag) {}

  record NotSaidAlways(Optional<UUID> refitCase) {}

  @Test
  @DisplayName("have examples that keep them, all of them")
  void examples() {
    for (String topic : new String[] {"people", "sizing.events", "fitting.events"}) {
      assertThat(CONTRACTS.typesOf(topic)).as(topic).isNotEmpty();
      CONTRACTS
          .typesOf(topic)
          .forEach(type -> CONTRACTS.validateProduced(type, CONTRACTS.exampleOf(type)));
    }
  }

  @Test
  @DisplayName("keep personal details on people alone")
  void people() {
    assertThat(CONTRACTS.typesOf("people"))
        .contains("org.tapeline.sizing.player-details.v1")
        .doesNotContain("org.tapeline.sizing.player-enrolled.v1");
    assertThat(CONTRACTS.typesOf("sizing.events"))
        .contains("org.tapeline.sizing.player-enrolled.v1")
        .doesNotContain("org.tapeline.sizing.player-details.v1");
  }

  @Test
  @DisplayName("refuse a missing, an unknown and a wrong field")
  void produced() {
    assertThatThrownBy(() -> CONTRACTS.validateProduced(SENT, without("attempt")))
        .isInstanceOf(AssertionError.class);
    assertThatThrownBy(() -> CONTRACTS.validateProduced(SENT, with("street", "x")))
        .isInstanceOf(AssertionError.class);
    assertThatThrownBy(() -> CONTRACTS.validateProduced(SENT, with("attempt", "first")))
        .isInstanceOf(AssertionError.class);
    assertThatThrownBy(() -> CONTRACTS.validateProduced(SENT, with("notice", "the first")))
        .hasMessageContaining("notice");
    assertThatThrownBy(() -> CONTRACTS.validateProduced(SENT, with("at", "yesterday")))
        .hasMessageContaining("at");
  }

  @Test
  @DisplayName("let a consumer read only what is promised")
  void consumed() {
    assertThatCode(() -> CONTRACTS.checkConsumed(SENT, Sent.class)).doesNotThrowAnyException();
    assertThatCode(() -> CONTRACTS.checkConsumed(RAISED, NotSaidAlways.class))
        .doesNotThrowAnyException();
    assertThatThrownBy(() -> CONTRACTS.checkConsumed(SENT, MadeUp.class))
        .hasMessageContaining("subject");
    assertThatThrownBy(() -> CONTRACTS.checkConsumed(SENT, OfAnotherType.class))
        .hasMessageContaining("attempt");
    assertThatThrownBy(() -> CONTRACTS.checkConsumed(FAILED, Failed.class))
        .hasMessageContaining("needs[].colour is not in the contract");
    assertThatThrownBy(() -> CONTRACTS.checkConsumed(FAILED, FailedWithNumbers.class))
        .hasMessageContaining("failedChecks[]");
    assertThatThrownBy(() -> CONTRACTS.checkConsumed(FAILED, NumberPerhaps.class))
        .hasMessageContaining("tag");
    assertThatThrownBy(() -> CONTRACTS.checkConsumed(RAISED, NotSaid.class))
        .hasMessageContaining("refitCase");
  }

  private static JsonNode without(String field) {
    ObjectNode event = CONTRACTS.exampleOf(SENT).deepCopy();
    event.remove(field);
    return event;
  }

  private static JsonNode with(String field, String value) {
    ObjectNode event = CONTRACTS.exampleOf(SENT).deepCopy();
    event.put(field, value);
    return event;
  }
}
