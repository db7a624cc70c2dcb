package org.tapeline.inventory.helmet;

import java.util.List;

/** What is decided: what happens, or why it does not. */
public sealed interface Decision {

  /** It happens; no event at all when nothing changes. */
  record Accepted(List<HelmetEvent> events) implements Decision {}

  /** It does not, and the sentence says what to do. */
  record Refused(String code, String sentence) implements Decision {}

  static Decision accepted(HelmetEvent... events) {
    return new Accepted(List.of(events));
  }
}
