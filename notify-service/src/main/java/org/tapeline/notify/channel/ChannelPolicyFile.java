package org.tapeline.notify.channel;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.tapeline.journal.EventJson;
import org.tapeline.notify.notice.Urgency;

/** Reads {@code channels.json} when the service starts: with a gap it does not start. */
@Singleton
class ChannelPolicyFile {

  /** What stands in the file, by the code of an urgency. */
  record Content(Map<String, ChannelPolicy.Rule> rules) {}

  @Produces
  @Singleton
  ChannelPolicy policy() {
    return read();
  }

  static ChannelPolicy read() {
    try (InputStream in = ChannelPolicyFile.class.getResourceAsStream("/channels.json")) {
      Map<Urgency, ChannelPolicy.Rule> rules = new EnumMap<>(Urgency.class);
      EventJson.MAPPER
          .readValue(in, Content.class)
          .rules()
          .forEach((urgency, rule) -> rules.put(Urgency.of(urgency), rule));
      return new ChannelPolicy(rules);
    } catch (IOException e) {
      throw new UncheckedIOException("channels.json cannot be read", e);
    }
  }
}
