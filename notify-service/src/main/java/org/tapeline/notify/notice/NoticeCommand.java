package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

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

  /**
   * A channel cannot reach the person.
   *
   * @param next the channel to be tried now; empty when there is none left
   */
  record Exhaust(String channel, WhyUndeliverable why, Optional<String> next, Instant at)
      implements NoticeCommand {}

  /** The channel says that it arrived, whatever was thought of it since. */
  record NoteDelivered(String channel, int attempt, Instant at) implements NoticeCommand {}

  /** It cannot be delivered on any channel. */
  record GiveUp(String channel, WhyUndeliverable why, Instant at) implements NoticeCommand {}

  /** The person confirms to have read it. */
  record Acknowledge(Instant at) implements NoticeCommand {}

  /** It was overtaken, or turned off; allowed only while no channel took it. */
  record Cancel(String why, Instant at) implements NoticeCommand {}

  /**
   * Nobody confirmed it in time.
   *
   * @param to the channel by which it goes once more; empty when people are told
   */
  record Escalate(EscalationStep step, Optional<String> to, Instant at) implements NoticeCommand {
    public Escalate {
      if (step.reachesPeople() == to.isPresent()) {
        throw new IllegalArgumentException("A second channel is named, and nothing else is");
      }
    }
  }

  /**
   * Somebody of the staff told the person.
   *
   * @param by the staff id of who did it
   */
  record Reach(ReachedBy way, String by, Instant at) implements NoticeCommand {}
}
