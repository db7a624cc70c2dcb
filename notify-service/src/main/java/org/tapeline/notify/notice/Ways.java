package org.tapeline.notify.notice;

/** Knows how people can be reached; always in the caller's transaction. */
public interface Ways {

  /** The way to try first. */
  Way first(String recipient, NoticeKind kind, Urgency urgency);
}
