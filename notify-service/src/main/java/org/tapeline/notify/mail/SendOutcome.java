package org.tapeline.notify.mail;

/** What the mail server made of a message. */
public sealed interface SendOutcome {

  /** It took the message: from here on it is the server's. */
  record Taken() implements SendOutcome {}

  /**
   * It refused the address for good.
   *
   * @param code such as {@code 550 5.1.1}
   */
  record AddressRefused(String code) implements SendOutcome {}

  /**
   * It refused the message for good.
   *
   * @param code such as {@code 554 5.6.0}
   */
  record MessageRefused(String code) implements SendOutcome {}

  /**
   * Not now, or nobody knows: worth another try.
   *
   * @param code such as {@code 451} or {@code connect-failed}
   */
  record Failed(String code) implements SendOutcome {}
}
