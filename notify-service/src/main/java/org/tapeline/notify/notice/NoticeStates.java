package org.tapeline.notify.notice;

import java.util.List;
import java.util.Optional;
import org.tapeline.journal.quarkus.http.Problem;

/** The words for a notice's state that a filter may name. */
public final class NoticeStates {
  public static final List<String> ALL =
      List.of("raised", "sent", "undeliverable", "acknowledged", "cancelled");

  private NoticeStates() {}

  /** A filter that is absent or empty asks for all. */
  static Optional<String> filter(String state) {
    if (state == null || state.isBlank()) {
      return Optional.empty();
    }
    if (!ALL.contains(state)) {
      throw Problem.badRequest(
          "unknown-state",
          "A notice's state is one of " + String.join(", ", ALL) + ".",
          new Problem.FieldError("state", "unknown: " + state));
    }
    return Optional.of(state);
  }
}
