package org.tapeline.proof.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tapeline.proof.fuzz.wire.Answer;
import org.tapeline.proof.fuzz.wire.Call;

/** What no answer may be, whatever was asked. */
final class Judge {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** A sentence that says what to do has more letters. */
  private static final int LEAST = 15;

  /** Lines of a stack trace, and names of classes of ours, of the JDK and of the libraries. */
  private static final Pattern INSIDES =
      Pattern.compile(
          "\\bat [a-z]\\w*(\\.[\\w$]+){2,}\\(|\\b\\w+(Exception|Error)\\b(?!</)|"
              + "\\b(java|javax|jakarta|io\\.quarkus|io\\.vertx|io\\.smallrye|com\\.fasterxml|"
              + "org\\.(postgresql|hibernate|jboss|apache|tapeline\\.\\w+\\.\\w+))\\.[a-zA-Z]\\w*|"
              + "SQLSTATE|select .{1,80} from \\w+");

  private Judge() {}

  /**
   * What is wrong with an answer; empty when nothing is.
   *
   * @param api refusals must be problems in JSON; pages elsewhere
   * @param broken the request was not even HTTP: a plain refusal by the server will do
   * @param call what it says is quoted back, and is no name of ours
   */
  static Optional<String> wrong(Answer answer, boolean api, boolean broken, Call call) {
    if (!answer.whole()) {
      return Optional.of("no end of the answer within " + answer.took().toSeconds() + " s");
    }
    if (answer.status() == 0) {
      return broken ? Optional.empty() : Optional.of("no answer");
    }
    if (answer.status() >= 500) {
      return Optional.of("status " + answer.status());
    }
    if (call.method().equals("HEAD")) {
      return Optional.empty();
    }
    Optional<String> inside = inside(answer, call);
    if (inside.isPresent()) {
      return Optional.of("tells of its insides: " + inside.get());
    }
    if (!answer.refused() || (broken && answer.body().length < 40)) {
      return Optional.empty();
    }
    return api ? noProblem(answer) : noPage(answer);
  }

  private static Optional<String> inside(Answer answer, Call call) {
    boolean other = !answer.refused() && answer.type().matches(".*(pdf|image|javascript|css).*");
    // Whoever looks into parked events is told what failed in the words of whatever failed.
    if (other || call.target().contains("/api/parked")) {
      return Optional.empty();
    }
    String sent = call.said();
    Matcher found = INSIDES.matcher(answer.text());
    while (found.find()) {
      if (!sent.contains(found.group())) {
        return Optional.of(found.group());
      }
    }
    return Optional.empty();
  }

  private static Optional<String> noProblem(Answer answer) {
    if (!answer.type().equals("application/problem+json")) {
      return Optional.of(
          "status " + answer.status() + " with " + named(answer.type()) + " instead of a problem");
    }
    try {
      JsonNode problem = JSON.readTree(answer.text());
      String detail = problem.path("detail").asText();
      if (problem.path("title").asText().isBlank()
          || problem.path("status").asInt() != answer.status()) {
        return Optional.of("a problem without its title and status");
      }
      boolean says = detail.length() >= LEAST && !detail.equals(problem.path("title").asText());
      return says
          ? Optional.empty()
          : Optional.of("status " + answer.status() + " whose detail does not say what to do");
    } catch (JsonProcessingException e) {
      return Optional.of("a problem that is no JSON");
    }
  }

  private static Optional<String> noPage(Answer answer) {
    boolean page = answer.type().equals("text/html") && answer.text().contains("<h1");
    boolean head = answer.body().length == 0 && answer.header("content-length").equals("");
    return page || head || answer.type().equals("application/problem+json")
        ? Optional.empty()
        : Optional.of(
            "status " + answer.status() + " with " + named(answer.type()) + " instead of a page");
  }

  private static String named(String type) {
    return type.isEmpty() ? "nothing" : type;
  }
}
