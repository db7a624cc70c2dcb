package org.tapeline.notify.channel;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.quarkus.arc.All;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;

/** Which channels can be used now; each copy of the service finds out for itself. */
@ApplicationScoped
class ChannelGauges {
  private final List<Channel> channels;
  private final ChannelWorkers workers;
  private final MeterRegistry registry;

  ChannelGauges(@All List<Channel> channels, ChannelWorkers workers, MeterRegistry registry) {
    this.channels = channels;
    this.workers = workers;
    this.registry = registry;
  }

  void register(@Observes StartupEvent event) {
    for (Channel channel : channels) {
      Gauge.builder("tapeline.channel.on", () -> channel.on() ? 1 : 0)
          .description("1 when the channel is set up")
          .tag("channel", channel.code())
          .register(registry);
      Gauge.builder("tapeline.channel.resting", () -> workers.resting(channel) ? 1 : 0)
          .description("1 while the channel is left alone since it failed as a whole")
          .tag("channel", channel.code())
          .register(registry);
    }
  }
}
