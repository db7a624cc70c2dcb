package org.tapeline.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A subscription")
class SubscriptionTest {
  private static final String HANDLED = "org.tapeline.fitting.refit-opened.v1";
  private static final String IGNORED = "org.tapeline.fitting.refit-closed.v1";

  record Nothing() {}

  private static ReceivedEvent event(String type) {
    UUID id = UUID.randomUUID();
    Instant now = Instant.now();
    return new ReceivedEvent(
        "fitting.events",
        id,
        type,
        "refit-1",
        1,
        "1",
        now,
        id,
        id,
        EventJson.MAPPER.createObjectNode());
  }

  @Test
  @DisplayName("does what comes before with every event that is handled, and with no other")
  void before() {
    List<String> done = new ArrayList<>();
    Subscription subscription =
        Subscription.named("notify")
            .events("fitting.events")
            .before(event -> done.add("before " + event.type()))
            .on(HANDLED, Nothing.class, (nothing, event) -> done.add("handled"))
            .ignoring(IGNORED);
    subscription.handle(event(HANDLED));
    subscription.handle(event(IGNORED));
    assertThat(done).containsExactly("before " + HANDLED, "handled");
  }
}
