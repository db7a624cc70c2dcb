package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.Objects;

/** What can be asked of a notice; the time is part of it. */
public sealed interface NoticeCommand {

  /** Tell somebody; the event is made by whoever knows the cause. */
  record Raise(NoticeRaised raised) implements NoticeCommand {
    public Raise {
      Objects.requireNonNull(raised, "raised");
    }
  }

  /** The channel took it over at this try. */
  record NoteSent(String channel, int attempt, Instant at) implements NoticeCommand {
    public NoteSent {
      if (attempt < 1) {
        throw new IllegalArgumentException("Tries count from 1, not " + attempt);
      }
    }
  }

  /** It cannot be delivered on this channel. */
  record GiveUp(String channel, WhyUndeliverable why, Instant at) implements NoticeCommand {}

  /** The person confirms to have read it. */
  record Acknowledge(Instant at) implements NoticeCommand {}

  /** It was overtaken; allowed only while no try to send it was made. */
  record Cancel(String why, Instant at) implements NoticeCommand {}
}
