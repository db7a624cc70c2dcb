package org.tapeline.notify.notice;

import java.util.List;

/** What a command leads to. */
public sealed interface Decision {

  /** The events to record; none when it was done before. */
  record Accepted(List<NoticeEvent> events) implements Decision {
    public Accepted {
      events = List.copyOf(events);
    }
  }

  /**
   * Not done.
   *
   * @param code a stable word
   * @param sentence what the person is told, with what to do
   */
  record Refused(String code, String sentence) implements Decision {}

  static Decision accepted(NoticeEvent... events) {
    return new Accepted(List.of(events));
  }

  static Decision refused(String code, String sentence) {
    return new Refused(code, sentence);
  }
}
