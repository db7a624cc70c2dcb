package org.tapeline.notify.channel;

import java.time.Duration;
import java.util.List;

/** The settings that every channel has. */
public interface ChannelLimits {
  /** How many messages are on their way at the same time. */
  int connections();

  /** Most messages a second of this process, 1 or more. */
  int perSecond();

  /** For connecting, and for each answer of the server. */
  Duration timeout();

  /** After how long a try that never ended counts as cut off; well above the timeout. */
  Duration cutOffAfter();

  /** Waits between the tries of one message. */
  List<Duration> backOff();

  Duration giveUpAfter();

  /** How long the channel rests after it failed as a whole, before one message tries it again. */
  Duration restWhenDown();
}
