package org.tapeline.journal.quarkus.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.ForbiddenException;
import io.quarkus.security.UnauthorizedException;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticator;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.validation.ConstraintViolationException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.tapeline.journal.CommandReused;
import org.tapeline.journal.OutOfReach;
import org.tapeline.journal.StreamConflict;
import org.tapeline.journal.UuidV7;

/** Turns whatever goes wrong into a problem: JSON under {@code /api}, a plain page elsewhere. */
public class ProblemMappers {
  private static final Logger LOG = Logger.getLogger(ProblemMappers.class);
  private static final int RETRY_SECONDS = 5;

  /** The connection may have broken while it was being stored. */
  private static final Problem AWAY =
      new Problem(
          503,
          "busy",
          "Not reachable just now",
          "Whether the last entry was stored is not known: send it again in a moment. With the same"
              + " command id it is not done twice.",
          List.of());

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

  /** Of two mappers the one for the nearer type is asked, so this one is needed as well. */
  @ServerExceptionMapper
  Response mismatched(MismatchedInputException e, UriInfo uri) {
    return malformed(e, uri);
  }

  @ServerExceptionMapper
  Response malformed(JsonProcessingException e, UriInfo uri) {
    return answer(UnreadableRequest.of(e), uri);
  }

  /** Programs are told to sign in; people are sent to where they can. */
  @ServerExceptionMapper
  Uni<Response> unauthorized(UnauthorizedException e, RoutingContext context, UriInfo uri) {
    if (isApi(uri)) {
      Problem problem =
          new Problem(
              401, "not-signed-in", "Not signed in", "Sign in and send it again.", List.of());
      return Uni.createFrom().item(answer(problem, uri));
    }
    HttpAuthenticator authenticator = context.get(HttpAuthenticator.class.getName());
    return authenticator.getChallenge(context).map(ProblemMappers::challenge);
  }

  @ServerExceptionMapper
  Response forbidden(ForbiddenException e, UriInfo uri) {
    return answer(
        Problem.forbidden("Your roles do not allow this. Ask the equipment manager."), uri);
  }

  /** Answers of the framework itself: no such path, no such method, not acceptable. */
  @ServerExceptionMapper
  Response framework(WebApplicationException e, UriInfo uri) {
    int status = e.getResponse().getStatus();
    if (status < 400) {
      return e.getResponse();
    }
    // The body's reader hides what it stumbled over in a refusal of its own.
    return e.getCause() instanceof JsonProcessingException json
        ? malformed(json, uri)
        : answer(FrameworkRefusal.of(e.getResponse().getStatusInfo()), uri);
  }

  @ServerExceptionMapper
  Response unexpected(Throwable e, UriInfo uri) {
    Optional<Problem> bad = UnreadableRequest.of(e).or(() -> UnstorableValue.of(e));
    if (bad.isPresent()) {
      return answer(bad.get(), uri);
    }
    if (OutOfReach.is(e)) {
      LOG.warnf("The database is out of reach: %s", e);
      return Response.fromResponse(answer(AWAY, uri)).header("Retry-After", RETRY_SECONDS).build();
    }
    UUID id = UuidV7.next();
    LOG.errorf(e, "Failed, correlation id %s", id);
    return answer(
        new Problem(
            500,
            "failed",
            "Something went wrong here",
            "Try again. If it goes on, tell the equipment manager this number: " + id,
            List.of()),
        uri,
        id);
  }

  private static Response challenge(ChallengeData challenge) {
    Response.ResponseBuilder response = Response.status(challenge.status);
    challenge.getHeaders().forEach((name, value) -> response.header(name.toString(), value));
    if (challenge.status == Response.Status.UNAUTHORIZED.getStatusCode()) {
      response.type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"));
      response.entity(Templates.page("Not signed in", "Sign in and open it again.").render());
    }
    return response.build();
  }

  private static boolean isApi(UriInfo uri) {
    return ForPrograms.is(uri.getPath());
  }

  private static Response answer(Problem problem, UriInfo uri) {
    return answer(problem, uri, UuidV7.next());
  }

  private static Response answer(Problem problem, UriInfo uri, UUID correlationId) {
    if (isApi(uri)) {
      return Response.status(problem.status())
          .type("application/problem+json")
          .entity(ProblemBody.of(problem, uri.getRequestUri().getPath(), correlationId))
          .build();
    }
    return Response.status(problem.status())
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .entity(Templates.page(problem.title(), problem.getMessage()).render())
        .build();
  }
}
