package org.tapeline.notify.notice;

import java.util.UUID;

/** Where one notice stands. */
public sealed interface Notice {

  /** Nothing was raised under this id. */
  record None() implements Notice {}

  /** To be sent. */
  record Raised(UUID notice, String recipient) implements Notice {}

  /** A channel took it over; nobody confirmed to have read it. */
  record Sent(UUID notice, String recipient) implements Notice {}

  /** Given up; somebody has to reach the person another way. */
  record Undeliverable(UUID notice, String recipient) implements Notice {}

  /** Read. */
  record Acknowledged(UUID notice, String recipient) implements Notice {}

  /** Overtaken before anybody was told. */
  record Cancelled(UUID notice, String recipient) implements Notice {}

  /** The state before the first event. */
  static Notice none() {
    return new None();
  }

  /** The word used in the database, on pages and in addresses. */
  default String code() {
    return switch (this) {
      case None n -> "none";
      case Raised r -> "raised";
      case Sent s -> "sent";
      case Undeliverable u -> "undeliverable";
      case Acknowledged a -> "acknowledged";
      case Cancelled c -> "cancelled";
    };
  }
}
