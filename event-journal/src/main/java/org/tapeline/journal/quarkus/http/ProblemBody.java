package org.tapeline.journal.quarkus.http;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.UUID;

/** The body of a refusal: {@code application/problem+json} (RFC 9457). */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ProblemBody(
    String type,
    String title,
    int status,
    String detail,
    String instance,
    UUID correlationId,
    List<Problem.FieldError> errors) {

  static ProblemBody of(Problem problem, String path, UUID correlationId) {
    return new ProblemBody(
        "https://tapeline.org/problems/" + problem.code(),
        problem.title(),
        problem.status(),
        problem.getMessage(),
        path,
        correlationId,
        problem.errors());
  }
}
