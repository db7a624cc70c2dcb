package org.tapeline.notify.notice;

import java.util.Locale;

/** Why a notice was given up on a channel. */
public enum WhyUndeliverable {
  /** No address is known on this channel. */
  NO_ADDRESS,
  /** The server refused the address for good. */
  ADDRESS_REFUSED,
  /** The server refused the message for good. */
  MESSAGE_REFUSED,
  /** The last try failed too. */
  TRIES_USED_UP,
  /** The channel took it and said later that it did not arrive. */
  NOT_DELIVERED,
  /** The person was erased before it was sent. */
  ERASED;

  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
