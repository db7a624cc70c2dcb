package org.tapeline.sizing.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.validation.ConstraintViolationException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.tapeline.journal.CommandReused;
import org.tapeline.journal.StreamConflict;
import org.tapeline.journal.UuidV7;

/** Turns whatever goes wrong into a problem: JSON under {@code /api}, a plain page elsewhere. */
public class ProblemMappers {
  private static final Logger LOG = Logger.getLogger(ProblemMappers.class);

  @CheckedTemplate(basePath = "problem")
  static class Templates {
    private Templates() {}

    static native TemplateInstance page(String title, String detail);
  }

  @ServerExceptionMapper
  Response problem(Problem problem, UriInfo uri) {
    return answer(problem, uri);
  }

  @ServerExceptionMapper
  Response reused(CommandReused e, UriInfo uri) {
    return answer(
        Problem.conflict(
            "command-reused",
            "This command id was used before for another request. Use a new one."),
        uri);
  }

  @ServerExceptionMapper
  Response conflict(StreamConflict e, UriInfo uri) {
    return answer(
        Problem.conflict("changed-meanwhile", "It changed meanwhile. Load it again and retry."),
        uri);
  }

  @ServerExceptionMapper
  Response invalid(ConstraintViolationException e, UriInfo uri) {
    List<Problem.FieldError> errors =
        e.getConstraintViolations().stream()
            .map(v -> new Problem.FieldError(v.getPropertyPath().toString(), v.getMessage()))
            .toList();
    return answer(
        new Problem(400, "invalid", "Not understood", "Correct the fields named.", errors), uri);
  }

  @ServerExceptionMapper
  Response malformed(JsonProcessingException e, UriInfo uri) {
    return answer(Problem.badRequest("malformed-json", "The body is not readable JSON."), uri);
  }

  /** Answers of the framework itself: no such path, no such method, not acceptable. */
  @ServerExceptionMapper
  Response framework(WebApplicationException e, UriInfo uri) {
    int status = e.getResponse().getStatus();
    if (status < 400) {
      return e.getResponse();
    }
    String reason = e.getResponse().getStatusInfo().getReasonPhrase();
    return answer(
        new Problem(
            status, "http-" + status, reason, "Check the address and the method.", List.of()),
        uri);
  }

  @ServerExceptionMapper
  Response unexpected(RuntimeException e, UriInfo uri) {
    UUID id = UuidV7.next();
    LOG.errorf(e, "Failed, correlation id %s", id);
    return answer(
        new Problem(
            500,
            "failed",
            "Something went wrong here",
            "Try again. If it goes on, tell the equipment manager this number: " + id,
            List.of()),
        uri);
  }

  private static Response answer(Problem problem, UriInfo uri) {
    if (uri.getPath().startsWith("/api") || uri.getPath().startsWith("api")) {
      return Response.status(problem.status())
          .type("application/problem+json")
          .entity(ProblemBody.of(problem, uri.getRequestUri().getPath(), UuidV7.next()))
          .build();
    }
    return Response.status(problem.status())
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .entity(Templates.page(problem.title(), problem.getMessage()).render())
        .build();
  }
}
