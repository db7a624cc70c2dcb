package org.tapeline.fitting.session;

import java.util.List;
import java.util.Optional;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Reads what was entered: what a program left out is nothing, and what is wrong is said. */
final class Entry {
  private Entry() {}

  static Object given(Object body) {
    if (body == null) {
      throw Problem.badRequest(
          "body-missing", "Send a JSON body; {} where nothing has to be said.");
    }
    return body;
  }

  static <T> Optional<T> opt(Optional<T> value) {
    return value == null ? Optional.empty() : value;
  }

  static String text(String value) {
    return value == null ? "" : value.strip();
  }

  static Problem wrong(String field, String message) {
    return new Problem(
        422, "entry", "Not recorded", message, List.of(new FieldError(field, message)));
  }
}
