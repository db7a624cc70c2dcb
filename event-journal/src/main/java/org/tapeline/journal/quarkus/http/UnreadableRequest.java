package org.tapeline.journal.quarkus.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.server.handlers.FormBodyHandler;
import org.jboss.resteasy.reactive.server.handlers.RequestDeserializeHandler;

/** Bodies that cannot be read. */
final class UnreadableRequest {
  private static final Set<String> READERS =
      Set.of(FormBodyHandler.class.getName(), RequestDeserializeHandler.class.getName());

  private UnreadableRequest() {}

  /** Names the field where there is one. */
  static Problem of(JsonProcessingException e) {
    String field =
        e instanceof JsonMappingException mapping
            ? mapping.getPath().stream()
                .map(at -> at.getFieldName() == null ? "" + at.getIndex() : at.getFieldName())
                .collect(Collectors.joining("."))
            : "";
    return field.isEmpty()
        ? Problem.badRequest(
            "malformed-json", "The body is not readable JSON. Send one object, in UTF-8.")
        : Problem.badRequest(
            "malformed-json",
            "The body does not fit: look at " + field + ".",
            new Problem.FieldError(field, "Send a value of the type that is described."));
  }

  /**
   * A form that breaks off, has a thousand fields or names an encoding that does not exist, and a
   * body whose sender goes away, end in whatever their reader stumbles over: it is known only by
   * where that was. A reader does nothing but read.
   */
  static Optional<Problem> of(Throwable e) {
    boolean reading =
        Arrays.stream(e.getStackTrace()).anyMatch(at -> READERS.contains(at.getClassName()));
    return reading
        ? Optional.of(
            new Problem(
                400,
                "unreadable-body",
                "Not understood",
                "What was sent could not be read. Send it again as the page or the description"
                    + " shows it.",
                List.of()))
        : Optional.empty();
  }
}
