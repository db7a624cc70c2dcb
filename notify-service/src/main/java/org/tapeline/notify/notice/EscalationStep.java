package org.tapeline.notify.notice;

import java.util.Locale;

/** What is done when a notice is not confirmed, in the order in which it is done. */
public enum EscalationStep {
  /** The same notice once more, by a channel that was not used yet. */
  SECOND_CHANNEL,
  /** The fitters of the player's field are told to reach the person. */
  FITTERS,
  /** The equipment manager is told. */
  MANAGER;

  /** Whether a person takes over. */
  public boolean reachesPeople() {
    return this != SECOND_CHANNEL;
  }

  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * @throws IllegalArgumentException when there is no such step
   */
  public static EscalationStep of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
