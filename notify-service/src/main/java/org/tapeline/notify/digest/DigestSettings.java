package org.tapeline.notify.digest;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Map;

/** When staff are told of their day. */
@ConfigMapping(prefix = "tapeline.digest")
public interface DigestSettings {
  /** The hour, on the clock of the recipient's place. */
  @WithDefault("06:30")
  LocalTime at();

  /** Other hours by recipient, such as {@code fitters.NORTH}. */
  Map<String, LocalTime> hours();

  /** Whether there is a mail also when there is nothing to say. */
  @WithDefault("false")
  boolean empty();

  /** From when on an open case counts as waiting too long. */
  @WithDefault("P7D")
  Duration tooLong();

  /** How often to look whether one is due; {@code off}: never. */
  @WithDefault("60s")
  String every();
}
