package org.tapeline.notify.channel;

import java.util.Optional;
import java.util.UUID;

/** One way to reach a person. */
public interface Channel {

  /** The word in events, in the database and in the policy: {@code mail}. */
  String code();

  /** Whether it is set up here at all. */
  boolean on();

  /** The recipient's address on it as it is now; in the caller's transaction. */
  Optional<String> addressOf(String recipient);

  /** How much it may be asked for, and what to do when it fails. */
  ChannelLimits limits();

  /** A connection for one thread. */
  Connection open();

  /**
   * A try begins, in the caller's transaction.
   *
   * @return the key by which the other side can know a repeat of the same message
   */
  String begin(UUID notice);

  /**
   * The other side took it, in the caller's transaction.
   *
   * @return false when it said in the meantime that the message did not arrive
   */
  boolean taken(UUID notice, Optional<String> id);

  /** Sends one message after another. */
  interface Connection extends AutoCloseable {
    SendOutcome send(Outgoing message);

    @Override
    void close();
  }
}
