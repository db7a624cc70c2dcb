package org.tapeline.journal;

/**
 * State without history on a compacted topic: the newest value of each key. Meant for personal
 * data, which must be erasable and so never stands in the journal.
 */
public interface CurrentState {

  /**
   * Sets the value of a key, in the caller's transaction. The same value again changes nothing.
   *
   * @param type the full name of its type, such as {@code org.tapeline.sizing.player-details.v1}
   */
  void put(String topic, String type, String key, Object data);

  /** Erases the value of a key: a tombstone is sent, then nothing is left here. */
  void erase(String topic, String type, String key);
}
