package org.tapeline.notify.channel;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;

/** Counts what the servers of the channels made of messages, and how long they took. */
@ApplicationScoped
class TryCounts {
  private final MeterRegistry registry;

  TryCounts(MeterRegistry registry) {
    this.registry = registry;
  }

  void count(Channel channel, SendOutcome outcome, Duration took) {
    Timer.builder("tapeline.notice.tries")
        .description("Tries to send a notice by channel and result, and how long they took")
        .tags("channel", channel.code(), "result", result(outcome))
        .register(registry)
        .record(took);
  }

  private static String result(SendOutcome outcome) {
    return switch (outcome) {
      case SendOutcome.Taken t -> "taken";
      case SendOutcome.AddressRefused r -> "address-refused";
      case SendOutcome.MessageRefused r -> "message-refused";
      case SendOutcome.Failed f -> "failed";
      case SendOutcome.Down d -> "down";
      case SendOutcome.Busy b -> "busy";
    };
  }
}
