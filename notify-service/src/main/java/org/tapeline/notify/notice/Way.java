package org.tapeline.notify.notice;

/** How a person is to be told. */
public sealed interface Way {

  /**
   * By a channel.
   *
   * @param channel such as {@code mail}
   */
  record By(String channel) implements Way {}

  /** Not at all: the person turned such news off. */
  record TurnedOff() implements Way {}

  /** No address is known on any channel. */
  record None() implements Way {}
}
