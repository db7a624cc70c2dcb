package org.tapeline.notify.channel;

import java.time.Duration;
import java.util.Optional;

/**
 * What a channel's server made of a message. A code is such as {@code 550 5.1.1} or {@code
 * connect-failed}; never the server's sentence, which may hold an address.
 */
public sealed interface SendOutcome {

  /**
   * It took the message: from here on it is the server's.
   *
   * @param id what the server calls the message, where it says so
   */
  record Taken(Optional<String> id) implements SendOutcome {}

  /** A hard bounce: it refused the address for good. */
  record AddressRefused(String code) implements SendOutcome {}

  /** It refused the message for good. */
  record MessageRefused(String code) implements SendOutcome {}

  /** A soft bounce: this message not now; worth another try. */
  record Failed(String code) implements SendOutcome {}

  /** The whole channel fails, or nobody knows what became of the message. */
  record Down(String code) implements SendOutcome {}

  /**
   * The server asks for a pause.
   *
   * @param pause how long, not negative
   */
  record Busy(String code, Duration pause) implements SendOutcome {}

  /** A message that the server has. */
  static SendOutcome taken() {
    return new Taken(Optional.empty());
  }
}
