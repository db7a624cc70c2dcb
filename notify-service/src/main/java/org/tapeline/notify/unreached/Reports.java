package org.tapeline.notify.unreached;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.notify.notice.ReachedBy;

/** Reads what a person, or a program, says about whom it reached. */
final class Reports {
  private Reports() {}

  static UUID id(String field, String text) {
    try {
      return UUID.fromString(text == null ? "" : text.strip());
    } catch (IllegalArgumentException e) {
      throw Problem.badRequest(
          "not-an-id",
          "Load the list again and press the button there.",
          new Problem.FieldError(field, "Needed: a UUID."));
    }
  }

  static Set<UUID> ids(String field, Collection<String> texts) {
    return (texts == null ? List.<String>of() : texts)
        .stream().map(text -> id(field, text)).collect(Collectors.toUnmodifiableSet());
  }

  static ReachedBy way(String text) {
    try {
      return ReachedBy.of(text == null ? "" : text);
    } catch (IllegalArgumentException e) {
      throw Problem.badRequest(
          "unknown-way",
          "Say how the person was reached: telephone or sheet.",
          new Problem.FieldError("way", "Needed: telephone or sheet."));
    }
  }
}
